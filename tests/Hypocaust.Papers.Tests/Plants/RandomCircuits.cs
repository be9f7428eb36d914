using Hypocaust.Design;

namespace Hypocaust.Papers.Tests.Plants;

/// <summary>Plants that make sense, rolled by seeded dice: a heater and whatever hangs between its ports.</summary>
internal sealed class RandomCircuits
{
    private static readonly string[] Kinds =
    [
        "pump",
        "valve",
        "check",
        "thermometer",
        "gauge",
        "vessel",
        "relief",
        "separator",
        "strainer",
        "fill",
        "drain",
        "vent",
        "purge",
        "meter",
    ];
    private readonly Random random;
    private readonly List<(string Name, string Part)> items = [("boiler", "heater")];
    private readonly List<string> runs = [];

    private RandomCircuits(int seed) => random = new Random(seed);

    public static HeatingDesign Plant(int seed)
    {
        var dice = new RandomCircuits(seed);
        dice.Way("boiler.out", "boiler.in", 0);
        return SamplePlants.Plant(
            dice.items,
            dice.runs,
            dice.random.Next(0, 12),
            Math.Max(1, dice.items.Count(item => item.Part == "manifold"))
        );
    }

    private void Way(string from, string to, int depth)
    {
        var run = Items(from, random.Next(0, depth == 0 ? 9 : 4));
        for (var loads = random.Next(8) == 0 ? 2 : 1; loads > 0; loads--)
        {
            run = Load(run, depth);
        }

        runs.Add(Items(run, random.Next(0, 4)) + " > " + to);
    }

    private string Load(string run, int depth)
    {
        switch (random.Next(depth > 2 ? 1 : 4))
        {
            case 0:
                var manifold = New("manifold");
                runs.Add($"{run} > {manifold}.supply");
                return Items(manifold + ".return", random.Next(0, 2));
            case 1:
                var tees = New("tees");
                runs.Add($"{run} > 1 m > {tees}.primaryIn");
                Way(tees + ".secondaryOut", tees + ".secondaryIn", depth + 1);
                return tees + ".primaryOut";
            case 2:
                var (split, join) = (New("tee"), New("tee"));
                runs.Add($"{run} > {split}.a");
                Way(split + ".b", join + ".a", depth + 1);
                Way(split + ".c", join + ".b", depth + 1);
                return join + ".c";
            default:
                var stub = New("tee");
                runs.Add($"{run} > {stub}.a");
                runs.Add(Items(stub + ".c", random.Next(1, 4)));
                return stub + ".b";
        }
    }

    private string Items(string run, int count)
    {
        for (var i = 0; i < count; i++)
        {
            run += " > " + New(Kinds[random.Next(Kinds.Length)]);
        }

        return run;
    }

    private string New(string part)
    {
        string[] names = ["", "by the north wall ", "of the old workshop beside the barn door "];
        var name = $"{part} {names[random.Next(names.Length)]}{items.Count}";
        items.Add((name, part));
        return name;
    }
}
