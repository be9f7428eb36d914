using System.Collections.Immutable;

namespace Hypocaust.Layout;

/// <summary>A straight piece or an arc of tube.</summary>
/// <param name="From">Where it starts, m.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Centre">Centre of the arc; null when straight.</param>
/// <param name="SweepRad">Angle of the arc, counter-clockwise positive; 0 when straight.</param>
public readonly record struct TubePiece(Spot From, Spot To, Spot? Centre, double SweepRad)
{
    /// <summary>Radius of the arc, m; null when straight.</summary>
    public double? RadiusM => Centre?.To(From);

    /// <summary>Length, m.</summary>
    public double LengthM => RadiusM is { } radius ? radius * Math.Abs(SweepRad) : From.To(To);

    /// <summary>Point at a share of its length.</summary>
    /// <param name="share">0 at the start, 1 at the end.</param>
    public Spot At(double share)
    {
        if (Centre is not { } centre)
        {
            return From + ((To - From) * share);
        }

        var angle = SweepRad * share;
        return centre + (From - centre).Turned(Math.Cos(angle), Math.Sin(angle));
    }
}

/// <summary>A tube path of straight pieces and arcs that touch end to end.</summary>
/// <param name="Pieces">The pieces from supply to return.</param>
public sealed record TubePath(ImmutableArray<TubePiece> Pieces)
{
    // arcs are drawn as chords of 15° at most: 0.2 % of the radius off
    private const double ChordRad = Math.PI / 12;

    /// <summary>Length, m, bends as arcs.</summary>
    public double LengthM { get; } = Pieces.Sum(piece => piece.LengthM);

    /// <summary>The path as points, arcs in chords of at most 15°.</summary>
    public ImmutableArray<Spot> Points()
    {
        var points = ImmutableArray.CreateBuilder<Spot>();
        foreach (var piece in Pieces)
        {
            var steps = Math.Max(
                1,
                (int)Math.Ceiling((Math.Abs(piece.SweepRad) / ChordRad) - 1e-9)
            );
            for (var i = 0; i < steps; i++)
            {
                points.Add(piece.At((double)i / steps));
            }
        }

        points.Add(Pieces[^1].To);
        return points.ToImmutable();
    }

    /// <summary>The same path turned about the origin.</summary>
    internal TubePath Turned(double cosine, double sine) =>
        new([
            .. Pieces.Select(piece => new TubePiece(
                piece.From.Turned(cosine, sine),
                piece.To.Turned(cosine, sine),
                piece.Centre?.Turned(cosine, sine),
                piece.SweepRad
            )),
        ]);
}
