using System.Collections.Immutable;

namespace Hypocaust.Layout;

/// <summary>Turns a path of corners into straight pieces and arcs that a tube can follow.</summary>
internal sealed class BendRounding
{
    private readonly List<Spot> corners;
    private readonly double leastM;
    private readonly double wantedM;
    private readonly Turn[] turns;
    private readonly ImmutableArray<TubePiece>.Builder pieces =
        ImmutableArray.CreateBuilder<TubePiece>();
    private Spot at;

    private BendRounding(IReadOnlyList<Spot> path, double leastM, double wantedM)
    {
        corners = Straightened(path);
        (this.leastM, this.wantedM) = (leastM, wantedM);
        turns = new Turn[corners.Count];
        at = corners[0];
    }

    /// <summary>The tube, its tightest radius, and by how much the widest hairpin bulges beyond its legs, m.</summary>
    public sealed record Outcome(TubePath Path, double TightestM, double BulgeM);

    private enum Kind
    {
        Plain,
        Hairpin,
        Swing,
        SecondOfPair,
    }

    // how far the tube leaves the corner's legs before the corner
    private readonly record struct Turn(Kind Kind, double TangentM);

    /// <summary>Rounds the corners.</summary>
    /// <param name="path">Two points or more.</param>
    /// <param name="leastM">Smallest radius that the tube takes, m.</param>
    /// <param name="wantedM">Radius where there is room, m.</param>
    public static Outcome Round(IReadOnlyList<Spot> path, double leastM, double wantedM) =>
        new BendRounding(path, leastM, Math.Max(leastM, wantedM)).Round();

    private Outcome Round()
    {
        Pairs();
        for (var i = 1; i < corners.Count - 1; i++)
        {
            if (turns[i].Kind == Kind.Plain)
            {
                turns[i] = new Turn(Kind.Plain, Tangent(i));
            }
        }

        var (tightest, bulge) = (double.PositiveInfinity, 0.0);
        for (var i = 1; i < corners.Count - 1; i++)
        {
            switch (turns[i].Kind)
            {
                case Kind.Plain:
                    tightest = Math.Min(tightest, Bend(i));
                    break;
                case Kind.Hairpin:
                    bulge = Math.Max(bulge, leastM - (corners[i].To(corners[i + 1]) / 2));
                    Hairpin(i);
                    tightest = Math.Min(tightest, leastM);
                    break;
                case Kind.Swing:
                    Swing(i);
                    tightest = Math.Min(tightest, leastM);
                    break;
            }
        }

        Straight(corners[^1]);
        return new Outcome(new TubePath(pieces.ToImmutable()), tightest, bulge);
    }

    private static List<Spot> Straightened(IReadOnlyList<Spot> path)
    {
        var kept = new List<Spot> { path[0] };
        for (var i = 1; i < path.Count; i++)
        {
            if (path[i].To(kept[^1]) < 1e-9)
            {
                continue;
            }

            if (kept.Count > 1)
            {
                var (a, b) = (kept[^1] - kept[^2], path[i] - kept[^1]);
                if (Math.Abs(a.Cross(b)) < 1e-9 * a.Norm * b.Norm && a.Dot(b) > 0)
                {
                    kept[^1] = path[i];
                    continue;
                }
            }

            kept.Add(path[i]);
        }

        return kept;
    }

    private Spot Way(int leg) => (corners[leg + 1] - corners[leg]) * (1 / Leg(leg));

    private double Leg(int leg) => corners[leg].To(corners[leg + 1]);

    private double Angle(int corner)
    {
        var (a, b) = (Way(corner - 1), Way(corner));
        return Math.Atan2(a.Cross(b), a.Dot(b));
    }

    private bool IsSquare(int corner) => Math.Abs(Math.Abs(Angle(corner)) - (Math.PI / 2)) < 1e-6;

    // two corners so close that the tube cannot take them one by one: a hairpin or a swing aside
    private void Pairs()
    {
        for (var i = 1; i + 1 < corners.Count - 1; i++)
        {
            var gap = Leg(i);
            if (
                turns[i].Kind != Kind.Plain
                || gap >= 2 * leastM - 1e-9
                || leastM > 0.9 * gap
                || !IsSquare(i)
                || !IsSquare(i + 1)
            )
            {
                continue;
            }

            var kind = Math.Sign(Angle(i)) == Math.Sign(Angle(i + 1)) ? Kind.Hairpin : Kind.Swing;
            var tangent =
                kind == Kind.Hairpin
                    ? HairpinHeight(gap) + leastM
                    : leastM * Math.Sin(SwingAngle(gap));
            if (Leg(i - 1) >= tangent + Needs(i - 1) && Leg(i + 1) >= tangent + Needs(i + 2))
            {
                turns[i] = new Turn(kind, tangent);
                turns[i + 1] = new Turn(Kind.SecondOfPair, tangent);
            }
        }
    }

    private double Needs(int corner) =>
        corner <= 0 || corner >= corners.Count - 1 ? 0
        : turns[corner].Kind == Kind.Plain ? Wanted(corner, leastM)
        : turns[corner].TangentM;

    private double Wanted(int corner, double radius) =>
        radius * Math.Tan(Math.Abs(Angle(corner)) / 2);

    private double HairpinHeight(double gap) =>
        Math.Sqrt((4 * leastM * leastM) - Math.Pow((gap / 2) + leastM, 2));

    private double SwingAngle(double gap) => Math.Acos(1 - (gap / (2 * leastM)));

    private double Tangent(int corner)
    {
        var wanted = Wanted(corner, wantedM);
        return Math.Min(wanted, Math.Min(Share(corner, -1, wanted), Share(corner, 1, wanted)));
    }

    // what a corner may take of the leg towards its neighbour: half of it, or what the neighbour leaves
    private double Share(int corner, int towards, double wanted)
    {
        var leg = Leg(towards < 0 ? corner - 1 : corner);
        var other = corner + towards;
        if (other == 0 || other == corners.Count - 1)
        {
            return leg;
        }

        var theirs =
            turns[other].Kind == Kind.Plain ? Wanted(other, wantedM) : turns[other].TangentM;
        return turns[other].Kind != Kind.Plain
            ? leg - theirs
            : Math.Min(wanted, Math.Max(leg / 2, leg - theirs));
    }

    private double Bend(int corner)
    {
        var angle = Angle(corner);
        var tangent = turns[corner].TangentM;
        var radius = tangent / Math.Tan(Math.Abs(angle) / 2);
        var start = corners[corner] - (Way(corner - 1) * tangent);
        Straight(start);
        Arc(Way(corner - 1), radius, angle);
        return radius;
    }

    private void Hairpin(int corner)
    {
        var gap = Leg(corner);
        var sign = Math.Sign(Angle(corner));
        var alpha = Math.Acos(((gap / 2) + leastM) / (2 * leastM));
        var way = Way(corner - 1);
        Straight(corners[corner] - (way * turns[corner].TangentM));
        way = Arc(way, leastM, -sign * alpha);
        way = Arc(way, leastM, sign * (Math.PI + (2 * alpha)));
        Arc(way, leastM, -sign * alpha);
    }

    private void Swing(int corner)
    {
        var alpha = SwingAngle(Leg(corner)) * Math.Sign(Angle(corner));
        var way = Way(corner - 1);
        Straight(corners[corner] - (way * turns[corner].TangentM));
        way = Arc(way, leastM, alpha);
        Arc(way, leastM, -alpha);
    }

    private void Straight(Spot to)
    {
        if (at.To(to) > 1e-9)
        {
            pieces.Add(new TubePiece(at, to, null, 0));
            at = to;
        }
    }

    // an arc from where the tube is, in the direction in which it goes; gives the direction behind it
    private Spot Arc(Spot way, double radius, double sweep)
    {
        var centre = at + (new Spot(-way.Y, way.X) * (radius * Math.Sign(sweep)));
        var (cosine, sine) = (Math.Cos(sweep), Math.Sin(sweep));
        var to = centre + (at - centre).Turned(cosine, sine);
        if (radius > 1e-9)
        {
            pieces.Add(new TubePiece(at, to, centre, sweep));
            at = to;
        }

        return way.Turned(cosine, sine);
    }
}
