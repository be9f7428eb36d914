using Hypocaust.Layout;

namespace Hypocaust.Tests.Layout;

/// <summary>Measures laid tube by means of its own: the straight pieces and finely cut arcs, every one against every other.</summary>
internal sealed class LaidOut
{
    private readonly record struct Bit(
        int Loop,
        double At,
        double End,
        Spot From,
        Spot To,
        bool Tail,
        bool Bent
    );

    private readonly List<Bit> bits = [];
    private readonly double reachM;

    public LaidOut(IEnumerable<LaidLoop> loops, double reachM = 0.3)
    {
        this.reachM = reachM;
        var index = 0;
        foreach (var loop in loops)
        {
            Add(index++, loop);
        }
    }

    /// <summary>Pieces that touch though they do not follow each other, and the least distance from tube to tube off the apron
    /// between pieces farther apart along the tube than a hairpin (infinite beyond the reach).</summary>
    public (int Crossings, double ClosestM) Measure(double hairpinM)
    {
        var (crossings, closest) = (0, double.PositiveInfinity);
        foreach (var (a, b) in Pairs())
        {
            var distance = Distance(a, b);
            crossings += distance < 1e-9 ? 1 : 0;
            if (!a.Tail && !b.Tail && (a.Loop != b.Loop || Apart(a, b) > hairpinM))
            {
                closest = Math.Min(closest, distance);
            }
        }

        return (crossings, closest);
    }

    /// <summary>Least distance of tube to a set of walls.</summary>
    public double FromWalls(IReadOnlyList<(Spot From, Spot To)> walls) =>
        bits.Min(bit =>
            walls.Min(wall =>
            {
                var piece = new Bit(0, 0, 0, wall.From, wall.To, false, false);
                // the chord of an arc lies closer than the arc: its ends lie on it
                return bit.Bent ? Distance(bit.From, piece) : Distance(bit, piece);
            })
        );

    private void Add(int index, LaidLoop loop)
    {
        var at = 0.0;
        var pieces = loop.Path.Pieces;
        for (var p = 0; p < pieces.Length; p++)
        {
            var tail = p <= 1 || p >= pieces.Length - 2;
            // arcs in chords, straight pieces in half metres
            var steps = pieces[p].Centre is null ? (int)Math.Ceiling(pieces[p].LengthM / 0.5) : 6;
            for (var i = 0; i < steps; i++)
            {
                bits.Add(
                    new Bit(
                        index,
                        at + (pieces[p].LengthM * i / steps),
                        at + (pieces[p].LengthM * (i + 1) / steps),
                        pieces[p].At((double)i / steps),
                        pieces[p].At((i + 1.0) / steps),
                        tail,
                        pieces[p].Centre is not null
                    )
                );
            }

            at += pieces[p].LengthM;
        }
    }

    // pairs whose boxes come within the reach and which do not follow each other, found over squares of half a metre
    private IEnumerable<(Bit A, Bit B)> Pairs()
    {
        var squares = new Dictionary<(int, int), List<int>>();
        for (var i = 0; i < bits.Count; i++)
        {
            foreach (var square in Squares(bits[i]))
            {
                if (!squares.TryGetValue(square, out var there))
                {
                    squares[square] = there = [];
                }

                foreach (var other in there)
                {
                    if (i - other > 1 && Near(bits[i], bits[other]))
                    {
                        yield return (bits[other], bits[i]);
                    }
                }

                there.Add(i);
            }
        }
    }

    private bool Near(Bit a, Bit b) =>
        Math.Min(a.From.X, a.To.X) - reachM < Math.Max(b.From.X, b.To.X)
        && Math.Min(b.From.X, b.To.X) - reachM < Math.Max(a.From.X, a.To.X)
        && Math.Min(a.From.Y, a.To.Y) - reachM < Math.Max(b.From.Y, b.To.Y)
        && Math.Min(b.From.Y, b.To.Y) - reachM < Math.Max(a.From.Y, a.To.Y);

    private IEnumerable<(int, int)> Squares(Bit bit)
    {
        int Of(double value) => (int)Math.Floor(value / 0.5);
        var half = reachM / 2;
        var (left, right) = (
            Of(Math.Min(bit.From.X, bit.To.X) - half),
            Of(Math.Max(bit.From.X, bit.To.X) + half)
        );
        var (low, high) = (
            Of(Math.Min(bit.From.Y, bit.To.Y) - half),
            Of(Math.Max(bit.From.Y, bit.To.Y) + half)
        );
        for (var x = left; x <= right; x++)
        {
            for (var y = low; y <= high; y++)
            {
                yield return (x, y);
            }
        }
    }

    private static double Distance(Bit a, Bit b) =>
        Crosses(a, b)
            ? 0
            : Math.Min(
                Math.Min(Distance(a.From, b), Distance(a.To, b)),
                Math.Min(Distance(b.From, a), Distance(b.To, a))
            );

    private static double Apart(Bit a, Bit b) => Math.Max(a.At - b.End, b.At - a.End);

    private static double Turn(Spot a, Spot b, Spot c) =>
        ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));

    private static bool Crosses(Bit a, Bit b) =>
        Parted(Turn(a.From, a.To, b.From), Turn(a.From, a.To, b.To))
        && Parted(Turn(b.From, b.To, a.From), Turn(b.From, b.To, a.To));

    // pieces end to end on one line have areas of rounding noise on either sign
    private static bool Parted(double one, double other) =>
        one * other < 0 && Math.Min(Math.Abs(one), Math.Abs(other)) > 1e-10;

    private static double Distance(Spot point, Bit bit)
    {
        var (dx, dy) = (bit.To.X - bit.From.X, bit.To.Y - bit.From.Y);
        var square = (dx * dx) + (dy * dy);
        var share =
            square == 0
                ? 0
                : Math.Clamp(
                    (((point.X - bit.From.X) * dx) + ((point.Y - bit.From.Y) * dy)) / square,
                    0,
                    1
                );
        return Math.Sqrt(
            Math.Pow(bit.From.X + (share * dx) - point.X, 2)
                + Math.Pow(bit.From.Y + (share * dy) - point.Y, 2)
        );
    }
}
