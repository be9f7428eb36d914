using System.Collections.Immutable;
using System.Numerics;

namespace Hypocaust.Layout;

/// <summary>A coil of tube to buy and the loops that are cut from it.</summary>
/// <param name="CoilM">Length of the coil, m.</param>
/// <param name="Loops">Names of the loops, in the order of cutting.</param>
/// <param name="LeftM">What is left of it, m.</param>
public sealed record Coil(double CoilM, ImmutableArray<string> Loops, double LeftM);

/// <summary>Which loops are cut from which coil, each loop in one piece: no joint lies in the floor.</summary>
/// <param name="Coils">The coils to buy, the longest first.</param>
/// <param name="IsLeast">Whether no other choice wastes less (proven).</param>
/// <param name="WasteM">What is left of all coils, m.</param>
/// <param name="TooLong">Loops longer than the longest coil.</param>
public sealed record CoilPlan(
    ImmutableArray<Coil> Coils,
    bool IsLeast,
    double WasteM,
    ImmutableArray<string> TooLong
)
{
    /// <summary>Lengths in which tube is commonly sold, m (common practice, no source).</summary>
    public static readonly ImmutableArray<double> CommonCoilsM = [60, 90, 120, 150, 200, 240];

    // every set of loops is looked at: 3^12 ways to part them take a few milliseconds
    private const int MostExact = 12;

    /// <summary>The plan with the least tube bought, and among equals the fewest coils. Beyond twelve loops, a good one: longest first.</summary>
    /// <param name="loops">Names and lengths, m.</param>
    /// <param name="coilsM">Lengths on sale, m, as many of each as you like.</param>
    public static CoilPlan Of(
        IReadOnlyList<(string Name, double LengthM)> loops,
        IReadOnlyList<double> coilsM
    )
    {
        double[] sizes = [.. coilsM.Where(size => size > 0).Distinct().Order()];
        var longest = sizes.Length == 0 ? 0 : sizes[^1];
        var fit = loops
            .Where(loop => loop.LengthM <= longest)
            .OrderByDescending(loop => loop.LengthM)
            .ToList();
        var groups = fit.Count <= MostExact ? Exact(fit, sizes) : LongestFirst(fit, longest);
        ImmutableArray<Coil> coils =
        [
            .. groups
                .Select(group =>
                {
                    var sum = group.Sum(loop => loop.LengthM);
                    var size = Smallest(sizes, sum);
                    return new Coil(size, [.. group.Select(loop => loop.Name)], size - sum);
                })
                .OrderByDescending(coil => coil.CoilM)
                .ThenBy(coil => coil.Loops[0], StringComparer.Ordinal),
        ];
        return new CoilPlan(
            coils,
            fit.Count <= MostExact,
            coils.Sum(coil => coil.LeftM),
            [.. loops.Where(loop => loop.LengthM > longest).Select(loop => loop.Name)]
        );
    }

    private static double Smallest(double[] sizes, double lengthM) =>
        sizes.Where(size => size >= lengthM - 1e-9).DefaultIfEmpty(double.PositiveInfinity).Min();

    // the best way to buy for a set is the best first coil, with its longest loop, and the best way for the rest
    private static List<List<(string Name, double LengthM)>> Exact(
        List<(string Name, double LengthM)> loops,
        double[] sizes
    )
    {
        const double CoilCounts = 1e-3;
        var sets = 1 << loops.Count;
        var one = new double[sets];
        var best = new double[sets];
        var first = new int[sets];
        for (var set = 1; set < sets; set++)
        {
            var sum = 0.0;
            for (var rest = set; rest != 0; rest &= rest - 1)
            {
                sum += loops[BitOperations.TrailingZeroCount(rest)].LengthM;
            }

            one[set] = Smallest(sizes, sum) + CoilCounts;
        }

        for (var set = 1; set < sets; set++)
        {
            best[set] = double.PositiveInfinity;
            var lead = set & -set;
            var others = set ^ lead;
            for (var part = others; ; part = (part - 1) & others)
            {
                var cost = one[part | lead] + best[others ^ part];
                if (cost < best[set])
                {
                    (best[set], first[set]) = (cost, part | lead);
                }

                if (part == 0)
                {
                    break;
                }
            }
        }

        var groups = new List<List<(string, double)>>();
        for (var set = sets - 1; set > 0; set ^= first[set])
        {
            groups.Add([.. loops.Where((_, i) => (first[set] & (1 << i)) != 0)]);
        }

        return groups;
    }

    private static List<List<(string Name, double LengthM)>> LongestFirst(
        List<(string Name, double LengthM)> loops,
        double longest
    )
    {
        var groups = new List<List<(string Name, double LengthM)>>();
        foreach (var loop in loops)
        {
            var open = groups.Find(group =>
                group.Sum(one => one.LengthM) + loop.LengthM <= longest
            );
            if (open is null)
            {
                groups.Add([loop]);
            }
            else
            {
                open.Add(loop);
            }
        }

        return groups;
    }
}
