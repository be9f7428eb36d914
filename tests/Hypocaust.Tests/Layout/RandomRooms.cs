using System.Collections.Immutable;
using Hypocaust.Layout;

namespace Hypocaust.Tests.Layout;

/// <summary>Rooms made by chance from a fixed seed: rectangles, rectilinear towers and convex polygons, some with keep-outs.</summary>
internal static class RandomRooms
{
    public static IEnumerable<FloorPlan> Make(int count, int seed)
    {
        var random = new Random(seed);
        for (var i = 0; i < count; i++)
        {
            yield return One(random, i);
        }
    }

    private static FloorPlan One(Random random, int number)
    {
        var outline = (number % 3) switch
        {
            0 => Rectangle(0, 0, 2 + (8 * random.NextDouble()), 2 + (8 * random.NextDouble())),
            1 => Towers(random),
            _ => Convex(random),
        };
        double[] spacings = [0.1, 0.125, 0.15, 0.2, 0.25, 0.3];
        var spacing = spacings[random.Next(spacings.Length)];
        var clearances = new[] { 0.05, 0.1, 0.15 };
        var clearance = clearances[random.Next(3)];
        var wall = outline[0] + ((outline[1] - outline[0]) * (0.2 + (0.6 * random.NextDouble())));
        var room = new RoomPlan
        {
            Name = "room",
            Outline = outline,
            SpacingM = spacing,
            ClearanceM = clearance,
            BendRadiusM = 0.04 + (0.04 * random.NextDouble()),
            Pattern = random.Next(2) == 0 ? LayingPattern.Counterflow : LayingPattern.Serpentine,
            MaximumLoopM = 60 + (60 * random.NextDouble()),
            KeepOuts = number % 4 == 3 ? [KeepOut(random, outline)] : [],
        };
        return new FloorPlan([room], wall);
    }

    public static ImmutableArray<Spot> Rectangle(double x, double y, double width, double depth) =>
        [new(x, y), new(x + width, y), new(x + width, y + depth), new(x, y + depth)];

    // columns of chance heights on one base line, some of them hung below it
    private static ImmutableArray<Spot> Towers(Random random)
    {
        var (top, bottom) = (new List<Spot>(), new List<Spot>());
        var x = 0.0;
        for (var i = 0; i < 2 + random.Next(3); i++)
        {
            var next = x + 1.5 + (2.5 * random.NextDouble());
            var (high, low) = (
                3 + (4 * random.NextDouble()),
                i == 0 ? 0 : -1.5 * random.NextDouble()
            );
            top.Add(new(x, high));
            top.Add(new(next, high));
            bottom.Add(new(x, low));
            bottom.Add(new(next, low));
            x = next;
        }

        return [.. bottom, .. Enumerable.Reverse(top)];
    }

    private static ImmutableArray<Spot> Convex(Random random)
    {
        var count = 3 + random.Next(6);
        var (a, b) = (2.5 + (3 * random.NextDouble()), 2.5 + (3 * random.NextDouble()));
        var turn = random.NextDouble();
        return
        [
            .. Enumerable
                .Range(0, count)
                .Select(i => 2 * Math.PI * (i + turn + (0.4 * random.NextDouble())) / count)
                .Order()
                .Select(angle => new Spot(a * Math.Cos(angle), b * Math.Sin(angle))),
        ];
    }

    private static ImmutableArray<Spot> KeepOut(Random random, ImmutableArray<Spot> outline)
    {
        var (left, right) = (outline.Min(spot => spot.X), outline.Max(spot => spot.X));
        var (low, high) = (outline.Min(spot => spot.Y), outline.Max(spot => spot.Y));
        return Rectangle(
            left + ((right - left) * (0.25 + (0.3 * random.NextDouble()))),
            low + ((high - low) * (0.35 + (0.2 * random.NextDouble()))),
            0.3 + random.NextDouble(),
            0.3 + random.NextDouble()
        );
    }
}
