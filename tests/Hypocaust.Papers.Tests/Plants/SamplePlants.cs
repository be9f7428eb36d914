using System.Collections.Immutable;
using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Fluids;
using Hypocaust.Quantities;

namespace Hypocaust.Papers.Tests.Plants;

/// <summary>Plants of our own invention, written out by hand.</summary>
internal static class SamplePlants
{
    public static IEnumerable<string> Names =>
        [
            "primary and secondary",
            "direct",
            "two zones",
            "three zones",
            "stubs",
            "one part",
            "unpiped",
            "odd",
            "empty",
        ];

    public static HeatingDesign Of(string name) =>
        name switch
        {
            "primary and secondary" => PrimarySecondary(),
            "direct" => Direct(),
            "two zones" => Zones(2),
            "three zones" => Zones(3),
            "stubs" => Stubs(),
            "one part" => Plant([("boiler", "heater")], [], 0),
            "unpiped" => Plant(
                [
                    ("boiler", "heater"),
                    ("pump", "pump"),
                    ("floor manifold", "manifold"),
                    ("valve", "valve"),
                    ("vessel", "vessel"),
                    ("gauge", "gauge"),
                ],
                ["boiler.out > 1 m > pump"],
                3
            ),
            "odd" => Plant(
                [
                    ("boiler", "heater"),
                    ("one", "tee"),
                    ("two", "tee"),
                    ("three", "tee"),
                    ("four", "tee"),
                    ("pump", "pump"),
                    ("strainer", "strainer"),
                ],
                [
                    "boiler.out > one.a",
                    "one.b > pump > two.a",
                    "one.c > three.a",
                    "two.b > 1 m > three.b",
                    "two.c > four.a",
                    "three.c > four.b",
                    "four.c > strainer > boiler.in",
                ],
                0
            ),
            "empty" => Plant([], [], 0),
            _ => throw new ArgumentException(name, nameof(name)),
        };

    public static HeatingDesign PrimarySecondary(params (string From, string To)[] renamed)
    {
        string N(string name) => renamed.FirstOrDefault(pair => pair.From == name).To ?? name;
        return Plant(
            [
                (N("boiler"), "heater"),
                ("supply thermometer", "thermometer"),
                ("air separator", "separator"),
                ("expansion vessel", "vessel"),
                ("relief valve", "relief"),
                ("pressure gauge", "gauge"),
                ("fill valve", "fill"),
                ("isolating valve 1", "valve"),
                ("circulator A", "pump"),
                ("closely spaced tees", "tees"),
                ("return thermometer", "thermometer"),
                ("strainer", "strainer"),
                ("purge valve", "purge"),
                ("drain", "drain"),
                ("check valve", "check"),
                ("circulator B", "pump"),
                ("floor supply", "thermometer"),
                ("floor manifold", "manifold"),
                ("floor return", "thermometer"),
                ("balancing valve", "valve"),
            ],
            [
                $"{N("boiler")}.out > 0.5 m > supply thermometer > air separator > expansion vessel > relief valve > pressure gauge > fill valve > isolating valve 1 > circulator A > 1 m, 2 elbows > closely spaced tees.primaryIn",
                $"closely spaced tees.primaryOut > 1 m > return thermometer > strainer > purge valve > drain > 1 m > {N("boiler")}.in",
                "closely spaced tees.secondaryOut > 0.4 m > check valve > circulator B > floor supply > 1 m > floor manifold.supply",
                "floor manifold.return > 1 m > floor return > balancing valve > closely spaced tees.secondaryIn",
            ],
            5
        );
    }

    /// <summary>Parts piped by a seeded roll of the dice, sense or none.</summary>
    public static HeatingDesign Random(int seed)
    {
        var random = new Random(seed);
        string[] kinds =
        [
            "heater",
            "pump",
            "valve",
            "check",
            "thermometer",
            "gauge",
            "vessel",
            "relief",
            "tee",
            "tees",
            "manifold",
            "strainer",
            "drain",
            "nowhere",
        ];
        var items = Enumerable
            .Range(0, random.Next(1, 16))
            .Select(i =>
                (Name: $"part {(char)('a' + i)} of {seed}", Part: kinds[random.Next(kinds.Length)])
            )
            .ToList();
        var runs = Enumerable
            .Range(0, random.Next(0, 8))
            .Select(_ =>
                string.Join(
                    " > ",
                    Enumerable
                        .Range(0, random.Next(2, 6))
                        .Select(_ => End(items[random.Next(items.Count)], random))
                )
            );
        return Plant(items, runs, random.Next(0, 6));
    }

    private static string End((string Name, string Part) item, Random random)
    {
        string[] ports = item.Part switch
        {
            "tee" => ["a", "b", "c"],
            "tees" => ["primaryIn", "secondaryOut", "secondaryIn", "primaryOut"],
            "manifold" => ["supply", "return"],
            "heater" or "pump" or "valve" => ["in", "out"],
            _ => [],
        };
        return ports.Length == 0 || random.Next(3) == 0
            ? item.Name
            : $"{item.Name}.{ports[random.Next(ports.Length)]}";
    }

    private static HeatingDesign Direct() =>
        Plant(
            [
                ("boiler", "heater"),
                ("thermometer", "thermometer"),
                ("separator", "separator"),
                ("vessel", "vessel"),
                ("relief", "relief"),
                ("pump", "pump"),
                ("manifold", "manifold"),
                ("strainer", "strainer"),
            ],
            [
                "boiler.out > 0.5 m > thermometer > separator > vessel > relief > pump > 2 m > manifold.supply",
                "manifold.return > 2 m > strainer > boiler.in",
            ],
            3
        );

    private static HeatingDesign Zones(int count)
    {
        List<(string, string)> items =
        [
            ("boiler", "heater"),
            ("vent", "vent"),
            ("vessel", "vessel"),
            ("relief", "relief"),
            ("main gauge", "gauge"),
        ];
        List<string> runs =
        [
            "boiler.out > 1 m > vent > vessel > relief > main gauge > supply tee 1.a",
        ];
        for (var i = 1; i <= count; i++)
        {
            items.AddRange([
                ($"pump zone {i}", "pump"),
                ($"check zone {i}", "check"),
                ($"zone {i} supply", "thermometer"),
                ($"manifold {i}", "manifold"),
                ($"zone {i} return", "thermometer"),
            ]);
            var (from, to) =
                i == count
                    ? ($"supply tee {i - 1}.b", $"return tee {i - 1}.b")
                    : ($"supply tee {i}.c", $"return tee {i}.c");
            runs.Add(
                $"{from} > 1 m > pump zone {i} > check zone {i} > zone {i} supply > 1 m > manifold {i}.supply"
            );
            runs.Add($"manifold {i}.return > 1 m > zone {i} return > {to}");
            if (i < count)
            {
                items.AddRange([($"supply tee {i}", "tee"), ($"return tee {i}", "tee")]);
                if (i > 1)
                {
                    runs.Add($"supply tee {i - 1}.b > 0.3 m > supply tee {i}.a");
                    runs.Add($"return tee {i}.a > 0.3 m > return tee {i - 1}.b");
                }
            }
        }

        items.Add(("dirt separator", "dirt"));
        runs.Add("return tee 1.a > 1 m > dirt separator > boiler.in");
        return Plant(items, runs, 2 * count, count);
    }

    private static HeatingDesign Stubs() =>
        Plant(
            [
                ("boiler", "heater"),
                ("tee 1", "tee"),
                ("vessel valve", "valve"),
                ("vessel", "vessel"),
                ("pump", "pump"),
                ("tee 2", "tee"),
                ("fill valve", "fill"),
                ("meter", "meter"),
                ("switch", "switch"),
                ("mystery", "nowhere"),
            ],
            [
                "boiler.out > 1 m > tee 1 > pump > meter > switch > 4 m > mystery > tee 2 > boiler.in",
                "tee 1.c > 0.3 m > vessel valve > vessel",
                "tee 2.c > fill valve",
            ],
            0
        );

    public static HeatingDesign Plant(
        IEnumerable<(string Name, string Part)> items,
        IEnumerable<string> runs,
        int loops,
        int manifolds = 1
    )
    {
        var list = items.ToList();
        var bars = list.Where(item => item.Part == "manifold").Select(item => item.Name).ToList();
        return new(
            1,
            "Pottery studio",
            UnitSystem.Si,
            new Site(Quantity<TemperatureKind>.FromSi(-16), Quantity<TemperatureKind>.FromSi(8)),
            new BuildingDesign(Named<ZoneDesign>.Empty),
            new FloorDesign(
                new Named<FloorBuildUp>([
                    new(
                        "slab",
                        new FloorBuildUp(
                            Quantity<LengthKind>.FromSi(0.06),
                            Quantity<ConductivityKind>.FromSi(1.4),
                            Quantity<ThermalResistanceKind>.FromSi(0.02),
                            Quantity<ThermalResistanceKind>.FromSi(2.5)
                        )
                    ),
                ]),
                [
                    .. Enumerable
                        .Range(0, loops)
                        .Select(i => new LoopDesign(
                            LoopNames[i % LoopNames.Length]
                                + (i >= LoopNames.Length ? $" {i}" : ""),
                            "studio",
                            "slab",
                            "PEX 16",
                            Quantity<LengthKind>.FromSi(0.15),
                            Quantity<AreaKind>.FromSi(11),
                            bars.Count > 1 ? bars[i * manifolds / loops % bars.Count] : null
                        )),
                ]
            ),
            Parts,
            new PlantDesign(
                new FluidDesign(FluidKind.PropyleneGlycol, Quantity<FractionKind>.FromSi(0.3)),
                new Named<PlantItem>(
                    list.Select(item =>
                        KeyValuePair.Create(
                            item.Name,
                            new PlantItem(item.Part, Speed: item.Part == "pump" ? 2 : null)
                        )
                    )
                ),
                [
                    .. runs.Select(run => new PipeRun(
                        "copper",
                        [.. run.Split(" > ").Select(step => RunStep.Read(step).Value)]
                    )),
                ]
            )
        );
    }

    private static readonly string[] LoopNames =
    [
        "kiln side",
        "wheel",
        "glaze bench",
        "window",
        "door",
    ];

    private static Named<Part> Parts { get; } =
        new([
            new("heater", new HeaterPart(Quantity<PowerKind>.FromSi(9000))),
            new("pump", new CirculatorPart([])),
            new("separator", Inline(InlineFunction.AirSeparator)),
            new("dirt", Inline(InlineFunction.DirtSeparator)),
            new("strainer", Inline(InlineFunction.Strainer)),
            new("valve", Inline(InlineFunction.ShutOff)),
            new("purge", Inline(InlineFunction.Purge)),
            new("check", Inline(InlineFunction.Check)),
            new("meter", Inline(InlineFunction.FlowMeter)),
            new("switch", Inline(InlineFunction.FlowSwitch)),
            new("thermometer", new TappingPart(TappingFunction.Thermometer)),
            new("gauge", new TappingPart(TappingFunction.Gauge)),
            new("vent", new TappingPart(TappingFunction.AirVent)),
            new("fill", new TappingPart(TappingFunction.Fill)),
            new("drain", new TappingPart(TappingFunction.Drain)),
            new("vessel", new VesselPart(Quantity<VolumeKind>.FromSi(0.012))),
            new("relief", new ReliefPart(Quantity<PressureKind>.FromSi(200000))),
            new("tee", new TeePart()),
            new(
                "tees",
                new CloselySpacedTeesPart(
                    Quantity<LengthKind>.FromSi(0.02),
                    Quantity<LengthKind>.FromSi(0.06)
                )
            ),
            new("manifold", new ManifoldPart(6)),
        ]);

    private static InlinePart Inline(InlineFunction function) =>
        new(function, Quantity<FlowCoefficientKind>.FromSi(3));
}
