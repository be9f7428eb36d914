using Hypocaust.Design;

namespace Hypocaust.Tests.Review;

/// <summary>One way to spoil a design.</summary>
/// <param name="Name">What is done to what.</param>
/// <param name="Item">The item that must be there, or empty.</param>
/// <param name="Change">Does it.</param>
internal sealed record Mutant(string Name, string Item, Action<DesignEdits> Change)
{
    public bool AppliesTo(DesignEdits design) => Item.Length == 0 || design.Items.ContainsKey(Item);
}

/// <summary>Removes, turns round and mis-sizes every part of a design in turn.</summary>
internal static class MutantCatalogue
{
    public static IEnumerable<Mutant> Of(DesignEdits sound)
    {
        var design = sound.Read().Design;
        var parts = new PartLookup(design);
        return design
            .Plant!.Items.SelectMany(item => OfItem(item.Key, parts.Find(item.Value.Part)!))
            .Concat(Enumerable.Range(0, design.Plant.Runs.Length).Select(OfRun))
            .Concat(Enumerable.Range(0, design.Floor!.Loops.Length).SelectMany(OfLoop))
            .Concat(design.Floor.Sections.Names.SelectMany(OfSection))
            .Concat(OfFilling());
    }

    private static IEnumerable<Mutant> OfItem(string name, Part part) =>
        [
            new Mutant($"remove {name}", name, design => design.TakeOut(name)),
            .. Turned(name, part),
            .. MisSized(name, part),
        ];

    // a ball valve has no direction
    private static IEnumerable<Mutant> Turned(string name, Part part)
    {
        Mutant Turn(string what, string one, string other) =>
            new($"turn round {what}", name, design => design.Swap(name, one, other));
        return part switch
        {
            InlinePart { Function: InlineFunction.ShutOff } => [],
            HeaterPart or CirculatorPart or InlinePart => [Turn(name, Ports.In, Ports.Out)],
            ManifoldPart => [Turn(name, Ports.Supply, Ports.Return)],
            CloselySpacedTeesPart =>
            [
                Turn($"{name}, primary", Ports.PrimaryIn, Ports.PrimaryOut),
                Turn($"{name}, secondary", Ports.SecondaryIn, Ports.SecondaryOut),
            ],
            _ => [],
        };
    }

    private static IEnumerable<Mutant> MisSized(string name, Part part)
    {
        Mutant Make(string how, string json) =>
            new($"{how} {name}", name, design => design.Make(name, json));
        Mutant Set(string how, string key, string value) =>
            new($"{how} {name}", name, design => design.Set($"plant/items/{name}/{key}", value));
        return part switch
        {
            HeaterPart =>
            [
                Make("too small", Heater("2 kW", "2 L/min")),
                Make("minimum flow above what comes:", Heater("9 kW", "30 L/min")),
                Set("set too high", "setPoint", "75 °C"),
                Set("set too low", "setPoint", "24 °C"),
            ],
            CirculatorPart =>
            [
                Make("too weak", Circulator("0.2 m", "0.15 m", "4 L/min")),
                Make("too strong", Circulator("30 m", "28 m", "200 L/min")),
            ],
            InlinePart inline => [Make("too small", Inline(inline)), .. Shut(name, inline)],
            ReliefPart =>
            [
                Make(
                    "set too high",
                    """{ "kind": "relief", "opens": "6 bar", "capacity": "50 kW" }"""
                ),
                Make(
                    "set too low",
                    """{ "kind": "relief", "opens": "1.2 bar", "capacity": "50 kW" }"""
                ),
                Make("too small", """{ "kind": "relief", "opens": "2 bar", "capacity": "2 kW" }"""),
            ],
            VesselPart =>
            [
                Make("too small", """{ "kind": "vessel", "size": "2 L" }"""),
                Set("too much gas in", "precharge", "1.9 bar"),
                Set("too little gas in", "precharge", "0.2 bar"),
            ],
            CloselySpacedTeesPart =>
            [
                Make(
                    "too far apart",
                    """{ "kind": "closelySpacedTees", "inner": "20 mm", "spacing": "0.6 m" }"""
                ),
                Make(
                    "too narrow",
                    """{ "kind": "closelySpacedTees", "inner": "6 mm", "spacing": "60 mm" }"""
                ),
            ],
            ManifoldPart =>
            [
                new Mutant(
                    $"valves too small in {name}",
                    name,
                    design => design.SetLoops("valve", "Kv 0.05")
                ),
            ],
            _ => [],
        };
    }

    private static IEnumerable<Mutant> Shut(string name, InlinePart part) =>
        part.Function is InlineFunction.ShutOff or InlineFunction.Purge
            ?
            [
                new Mutant(
                    $"shut {name}",
                    name,
                    design => design.Set($"plant/items/{name}/shut", true)
                ),
            ]
            : [];

    private static Mutant OfRun(int run) =>
        new(
            $"too narrow: pipe of run {run}",
            "",
            design => design.Set($"plant/runs/{run}/pipe", "copper 10x1")
        );

    private static IEnumerable<Mutant> OfLoop(int loop)
    {
        Mutant Set(string how, string key, string value) =>
            new(
                $"{how}: loop {loop}",
                "",
                design => design.Set($"floor/loops/{loop}/{key}", value)
            );
        return
        [
            Set("too long", "length", "240 m"),
            Set("throttled", "valve", "Kv 0.08"),
            Set("spaced too wide", "spacing", "450 mm"),
            Set("narrow tube", "tube", "pex barrier 12x2"),
            Set("tube without barrier", "tube", "pex 17x2"),
            new Mutant(
                $"shut: loop {loop}",
                "",
                design => design.Set($"floor/loops/{loop}/shut", true)
            ),
        ];
    }

    private static IEnumerable<Mutant> OfSection(string section)
    {
        Mutant Set(string how, string key, string value) =>
            new(
                $"{how}: {section}",
                "",
                design => design.Set($"floor/sections/{section}/{key}", value)
            );
        return
        [
            Set("too little screed", "cover", "22 mm"),
            Set("thick carpet", "covering", "0.15 m²K/W"),
            Set("little insulation", "below", "0.6 m²K/W"),
        ];
    }

    private static IEnumerable<Mutant> OfFilling() =>
        [
            new("filled too low", "", design => design.Set("plant/coldFill", "0.2 bar")),
            new("filled too high", "", design => design.Set("plant/coldFill", "2.4 bar")),
            new(
                "plain water in the frost",
                "",
                design => design.Set("plant/fluid/share", "0 %").Set("plant/coldestPlace", "-10 °C")
            ),
            new(
                "weak glycol",
                "",
                design =>
                    design
                        .Set("plant/fluid/kind", "propyleneGlycol")
                        .Set("plant/fluid/share", "10 %")
            ),
            new(
                "poisonous glycol",
                "",
                design =>
                    design
                        .Set("plant/fluid/kind", "ethyleneGlycol")
                        .Set("plant/fluid/share", "35 %")
            ),
        ];

    private static string Heater(string capacity, string minimum) =>
        $$"""{ "kind": "heater", "capacity": "{{capacity}}", "minimumFlow": "{{minimum}}", "kv": "Kv 2.5" }""";

    private static string Circulator(string shutOff, string middle, string end)
    {
        var speed = $$"""
            { "curve": [
              { "flow": "0 L/min", "head": "{{shutOff}}" },
              { "flow": "1 L/min", "head": "{{middle}}" },
              { "flow": "{{end}}", "head": "0.05 m" }
            ] }
            """;
        return $$"""{ "kind": "circulator", "isolating": true, "speeds": [{{speed}}, {{speed}}] }""";
    }

    private static string Inline(InlinePart part) =>
        $$"""{ "kind": "inline", "function": "{{char.ToLowerInvariant(part.Function.ToString()[0])}}{{part.Function.ToString()[1..]}}", "kv": "Kv 0.6" }""";
}
