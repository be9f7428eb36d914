namespace Hypocaust.Layout;

/// <summary>A wall at which a line of tube shall lie: it opens a pair of lines or closes one.</summary>
internal readonly record struct LineStop(double At, bool Opens, double Weight);

/// <summary>A strip with a distance of its own.</summary>
internal readonly record struct LineStrip(double From, double To, double GapM);

/// <summary>
/// The lines of tube along one axis. They come in pairs, supply and return. A pair opens or closes exactly at each wall,
/// and between walls the lines spread evenly, never closer than asked.
/// </summary>
internal sealed class LatticeLines(double gapM, IReadOnlyList<LineStrip> strips)
{
    /// <summary>The lines in rising order, an even number; empty where not even a pair fits.</summary>
    public double[] Between(IEnumerable<LineStop> wanted)
    {
        var stops = Merge(wanted);
        while (stops.Count >= 2)
        {
            var clash = Enumerable
                .Range(0, stops.Count - 1)
                .Where(i => Gaps(stops[i], stops[i + 1]) < 1)
                .Select(i => (int?)i)
                .FirstOrDefault();
            if (clash is not { } at)
            {
                return stops[0].Opens && !stops[^1].Opens ? Lines(stops) : [];
            }

            stops.RemoveAt(stops[at].Weight < stops[at + 1].Weight ? at : at + 1);
        }

        return [];
    }

    private static List<LineStop> Merge(IEnumerable<LineStop> wanted)
    {
        var merged = new List<LineStop>();
        foreach (var stop in wanted.OrderBy(stop => stop.At).ThenBy(stop => stop.Opens))
        {
            if (
                merged.Count > 0
                && merged[^1].Opens == stop.Opens
                && stop.At - merged[^1].At < 1e-6
            )
            {
                merged[^1] = merged[^1] with { Weight = merged[^1].Weight + stop.Weight };
            }
            else
            {
                merged.Add(stop);
            }
        }

        return merged;
    }

    private double[] Lines(List<LineStop> stops)
    {
        var lines = new List<double>();
        for (var i = 0; i + 1 < stops.Count; i++)
        {
            var (a, b) = (stops[i].At, stops[i + 1].At);
            lines.Add(a);
            var gaps = Gaps(stops[i], stops[i + 1]);
            var share = Count(a, b) / gaps;
            for (var k = 1; k < gaps; k++)
            {
                lines.Add(Reach(a, k * share));
            }
        }

        lines.Add(stops[^1].At);
        return [.. lines];
    }

    // open to close and close to open take an odd number of gaps, open to open and close to close an even one
    private int Gaps(LineStop a, LineStop b)
    {
        var most = (int)Math.Floor(Count(a.At, b.At) + 1e-9);
        var odd = a.Opens != b.Opens;
        return most % 2 == (odd ? 1 : 0) ? most : most - 1;
    }

    // how many gaps fit between, each zone counted at its own distance
    private double Count(double from, double to)
    {
        var count = 0.0;
        foreach (var (a, b, gap) in Zones(from, to))
        {
            count += (b - a) / gap;
        }

        return count;
    }

    private double Reach(double from, double gaps)
    {
        foreach (var (a, b, gap) in Zones(from, double.PositiveInfinity))
        {
            var here = (b - a) / gap;
            if (gaps <= here)
            {
                return a + (gaps * gap);
            }

            gaps -= here;
        }

        throw new InvalidOperationException("A line beyond the end of all zones.");
    }

    private IEnumerable<(double From, double To, double Gap)> Zones(double from, double to)
    {
        double[] cuts =
        [
            .. strips
                .SelectMany(strip => new[] { strip.From, strip.To })
                .Where(cut => cut > from && cut < to)
                .Order(),
            to,
        ];
        var at = from;
        foreach (var cut in cuts)
        {
            var middle = double.IsInfinity(cut) ? at + 1 : (at + cut) / 2;
            var gap = strips
                .Where(strip => strip.From <= middle && middle <= strip.To)
                .Select(strip => strip.GapM)
                .Append(gapM)
                .Min();
            yield return (at, cut, gap);
            at = cut;
        }
    }
}
