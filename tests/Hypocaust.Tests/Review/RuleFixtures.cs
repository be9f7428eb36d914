using System.Text.Json.Nodes;
using Hypocaust.Review;
using Hypocaust.Review.Rules.Air;
using Hypocaust.Review.Rules.Antifreeze;
using Hypocaust.Review.Rules.Circulation;
using Hypocaust.Review.Rules.Expansion;
using Hypocaust.Review.Rules.HeatedFloor;
using Hypocaust.Review.Rules.Heating;
using Hypocaust.Review.Rules.LowPressure;
using Hypocaust.Review.Rules.Piping;
using Hypocaust.Review.Rules.Relief;
using Hypocaust.Review.Rules.Service;

namespace Hypocaust.Tests.Review;

/// <summary>A design that a rule objects to, and one that it just lets pass.</summary>
internal sealed record RuleFixture(Type Rule, Func<DesignEdits> Triggers, Func<DesignEdits> Spares)
{
    /// <summary>The rule's name.</summary>
    public string Id => RuleBook.Rules.Single(rule => rule.GetType() == Rule).Id;
}

/// <summary>One line a rule: what to do to the pottery studio (or, where it says so, the cabin) so that the rule objects, and so that it just does not.</summary>
internal static class RuleFixtures
{
    private const string BallValve = "ball valve 3/4";

    public static IReadOnlyList<RuleFixture> All { get; } =
    [
        .. Relief(),
        .. Expansion(),
        .. Circulation(),
        .. Circuits(),
        .. Heating(),
        .. HeatedFloor(),
        .. AirAndFluid(),
        .. Service(),
    ];

    private static IEnumerable<RuleFixture> Relief() =>
        [
            Studio<ReliefValveMissing>(d => d.TakeOut("relief"), AsItIs),
            Studio<ReliefValveAboveWeakestPart>(
                d => d.Make("relief", ReliefValve("3.05 bar", "50 kW")),
                d => d.Make("relief", ReliefValve("3 bar", "50 kW"))
            ),
            Studio<ReliefValveTooSmall>(
                d => d.Make("relief", ReliefValve("2.5 bar", "8.9 kW")),
                d => d.Make("relief", ReliefValve("2.5 bar", "9 kW"))
            ),
            Studio<ReliefValveCapacityNotStated>(
                d => d.Set("plant/items/relief/part", "relief 2.5 bar"),
                AsItIs
            ),
            Studio<ReliefValveCanBeCutOff>(
                d => d.PutBehind("heater.out", "heater valve", BallValve),
                d => d.PutBehind("relief", "heater valve", BallValve)
            ),
        ];

    private static IEnumerable<RuleFixture> Expansion() =>
        [
            Studio<ExpansionVesselMissing>(d => d.TakeOut("vessel"), AsItIs),
            Studio<ExpansionVesselTooSmall>(
                d => d.Make("vessel", Vessel("11 L")),
                d => d.Make("vessel", Vessel("12 L"))
            ),
            Studio<ExpansionVesselCutOff>(
                d => ShutBehindSeparator(d).Set("plant/items/strainer valve/shut", true),
                ShutBehindSeparator
            ),
            Studio<ExpansionVesselCanBeCutOff>(
                d => d.PutBehind("separator", "vessel valve", BallValve),
                d => d.PutBehind("fill", "vessel valve", BallValve)
            ),
            Studio<PrechargeNotStated>(d => d.Remove("plant/items/vessel/precharge"), AsItIs),
            Studio<PrechargeTooHigh>(
                d => d.Set("plant/items/vessel/precharge", "1.4 bar"),
                d => d.Set("plant/items/vessel/precharge", "1.39 bar")
            ),
            Studio<PrechargeTooLow>(
                d => d.Set("plant/items/vessel/precharge", "0.69 bar"),
                d => d.Set("plant/items/vessel/precharge", "0.7 bar")
            ),
            Studio<ColdFillTooLow>(
                d => d.Set("plant/coldFill", "0.31 bar"),
                d => d.Set("plant/coldFill", "0.33 bar")
            ),
            Studio<WarmPressureNearRelief>(
                d => d.Set("plant/coldFill", "1.95 bar"),
                d => d.Set("plant/coldFill", "1.75 bar")
            ),
            Studio<CirculatorPumpsTowardsVessel>(
                d => MoveVessel(d, behind: "primary pump"),
                d => MoveVessel(d, behind: "relief")
            ),
            Studio<PressureBelowAtmosphere>(
                d => StrongPrimaryBehindResistance(d, "0.33 bar"),
                d => StrongPrimaryBehindResistance(d, "0.8 bar")
            ),
            Studio<CirculatorInletBoils>(
                d => d.Set("plant/items/primary pump/height", "23 m"),
                d => d.Set("plant/items/primary pump/height", "21 m")
            ),
        ];

    private static IEnumerable<RuleFixture> Circulation() =>
        [
            Studio<CirculatorMissing>(
                d => d.TakeOut("primary pump", "floor pump"),
                d => d.TakeOut("floor pump")
            ),
            Studio<CirculatorMovesNothing>(d => ShutLoops(d, 5), d => ShutLoops(d, 4)),
            Studio<CirculatorPipedBackwards>(
                d => SecondPump(d).TurnRound("second pump"),
                SecondPump
            ),
            Studio<CirculatorOutsideCurve>(
                d => d.Make("primary pump", Pump("12 L/min")),
                d => d.Make("primary pump", Pump("20 L/min"))
            ),
            Studio<CirculatorTooStrong>(
                d => d.Set("plant/items/heater/setPoint", "24 °C"),
                d => d.Set("plant/items/heater/setPoint", "31 °C")
            ),
            Studio<HeaterFlowBelowMinimum>(
                d => d.Make("heater", Heater("9 kW", "16 L/min")),
                d => d.Make("heater", Heater("9 kW", "15 L/min"))
            ),
            Studio<HeaterFlowNearMinimum>(
                d => d.Make("heater", Heater("9 kW", "14 L/min")),
                d => d.Make("heater", Heater("9 kW", "12.5 L/min"))
            ),
            Studio<HeaterPipedBackwards>(d => d.TurnRound("heater"), AsItIs),
            Studio<PartPipedBackwards>(
                d => d.TurnRound("strainer"),
                d => d.TurnRound("strainer valve")
            ),
            Studio<PartThrottles>(
                d => d.Make("purge heater", Purge("Kv 3")),
                d => d.Make("purge heater", Purge("Kv 6"))
            ),
            Studio<PipeThrottles>(d => LongerPipe(d, "60 m"), d => LongerPipe(d, "8 m")),
            Studio<ShutValveStopsFlow>(
                d => d.Set("plant/items/strainer valve/shut", true),
                d => d.Set("plant/items/strainer valve/shut", false)
            ),
            Studio<CheckValveHoldsBack>(d => d.TurnRound("floor check"), AsItIs),
            Studio<WaterTooFast>(
                d => d.Set("plant/runs/0/pipe", "copper 15x1"),
                d => d.Set("plant/runs/0/pipe", "copper 18x1")
            ),
        ];

    private static IEnumerable<RuleFixture> Circuits() =>
        [
            Studio<CloselySpacedTeesTooFarApart>(
                d => d.Make("tees", Tees("81 mm")),
                d => d.Make("tees", Tees("80 mm"))
            ),
            Studio<CloselySpacedTeesPipedBackwards>(
                d => d.Swap("tees", "primaryIn", "primaryOut"),
                d =>
                    d.Swap("tees", "primaryIn", "primaryOut")
                        .Swap("tees", "secondaryIn", "secondaryOut")
            ),
            Studio<SecondaryFlowAbovePrimary>(
                d => d.Set("plant/items/floor pump/speed", 2).SetLoops("valve", "Kv 1.2"),
                AsItIs
            ),
            Studio<SecondaryCircuitWithoutCheckValve>(d => d.TakeOut("floor check"), AsItIs),
            Cabin<ParallelCirculatorsWithoutCheckValve>(d => d.TakeOut("living check"), AsItIs),
            Cabin<WaterPassesStoppedCirculator>(
                d => d.TakeOut("bed check").Set("plant/items/bed pump/off", true),
                d => d.Set("plant/items/bed pump/off", true)
            ),
            Studio<LoopShut>(d => ShutLoops(d, 1), AsItIs),
            Studio<LoopsRunBackwards>(d => d.Swap("manifold", "supply", "return"), AsItIs),
            Studio<LoopStarved>(
                d => d.Set("floor/loops/0/valve", "Kv 0.18"),
                d => d.Set("floor/loops/0/valve", "Kv 0.3")
            ),
            Studio<LoopTooLong>(
                d => d.Set("floor/loops/0/length", "121 m"),
                d => d.Set("floor/loops/0/length", "120 m")
            ),
            Studio<LoopCoolsTooFar>(
                d => d.SetLoops("valve", "Kv 0.15"),
                d => d.SetLoops("valve", "Kv 0.45")
            ),
        ];

    private static IEnumerable<RuleFixture> Heating() =>
        [
            Studio<HeaterMissing>(d => d.TakeOut("heater"), AsItIs),
            Studio<SwitchedOff>(d => d.Set("plant/items/floor pump/off", true), AsItIs),
            Studio<HeaterTooSmall>(
                d => d.Make("heater", Heater("5.1 kW", "3 L/min")),
                d => d.Make("heater", Heater("5.4 kW", "3 L/min"))
            ),
            Studio<SetPointNotReached>(
                d => d.Make("heater", Heater("5.5 kW", "3 L/min")),
                d => d.Make("heater", Heater("6.5 kW", "3 L/min"))
            ),
            Studio<SetPointAboveTubeRating>(
                d => d.Set("plant/items/heater/setPoint", "71 °C"),
                d => d.Set("plant/items/heater/setPoint", "70 °C")
            ),
            Studio<WaterTooWarmForScreed>(
                d => d.Set("plant/items/heater/setPoint", "56 °C"),
                d => d.Set("plant/items/heater/setPoint", "55 °C")
            ),
            Studio<SetPointAboveHeaterMaximum>(
                d => d.Set("plant/items/heater/setPoint", "81 °C"),
                d => d.Set("plant/items/heater/setPoint", "80 °C")
            ),
        ];

    private static IEnumerable<RuleFixture> HeatedFloor() =>
        [
            Studio<FloorGivesTooLittle>(d => d.Set("plant/items/heater/setPoint", "42 °C"), AsItIs),
            Studio<ZoneNotHeated>(d => d.Set("building/zones/store", Store()), AsItIs),
            Studio<FloorSurfaceTooWarm>(d => d.Set("plant/items/heater/setPoint", "55 °C"), AsItIs),
            Studio<InsulationBelowTooThin>(
                d => d.Set("floor/sections/studio slab/below", "1.24 m²K/W"),
                d => d.Set("floor/sections/studio slab/below", "1.25 m²K/W")
            ),
            Studio<TubeCoverTooThin>(
                d => d.Set("floor/sections/studio slab/cover", "29 mm"),
                d => d.Set("floor/sections/studio slab/cover", "30 mm")
            ),
            Studio<CoveringTooThick>(
                d => d.Set("floor/sections/studio slab/covering", "0.16 m²K/W"),
                d => d.Set("floor/sections/studio slab/covering", "0.15 m²K/W")
            ),
            Studio<TubeSpacingTooWide>(
                d => d.Set("floor/loops/0/spacing", "310 mm"),
                d => d.Set("floor/loops/0/spacing", "12 in")
            ),
        ];

    private static IEnumerable<RuleFixture> AirAndFluid() =>
        [
            Studio<AirRemovalMissing>(
                d => d.TakeOut("separator").Make("manifold", Manifold("vents", false)),
                d => d.TakeOut("separator")
            ),
            Studio<AirSeparatorMissing>(d => d.TakeOut("separator"), AsItIs),
            Studio<AirSeparatorNotAtBestPlace>(
                d => MoveSeparator(d, behind: "return thermometer"),
                d => MoveSeparator(d, behind: "fill")
            ),
            Studio<HighPointWithoutVent>(
                d => d.Set("plant/items/gauge/height", "2.3 m"),
                d => d.Set("plant/items/gauge/height", "2.2 m")
            ),
            Studio<FluidFreezes>(
                d => d.Set("plant/coldestPlace", "-17 °C"),
                d => d.Set("plant/coldestPlace", "-16 °C")
            ),
            Studio<ColdestPlaceNotStated>(
                d => d.Remove("plant/coldestPlace").Set("site/designOutdoor", "-18 °C"),
                d => d.Remove("plant/coldestPlace")
            ),
            Studio<GlycolTooWeak>(
                d => d.Set("plant/fluid/share", "24 %"),
                d => d.Set("plant/fluid/share", "25 %")
            ),
            Studio<GlycolTooStrong>(
                d => d.Set("plant/fluid/share", "51 %"),
                d => d.Set("plant/fluid/share", "40 %")
            ),
            Studio<EthyleneGlycolIsPoisonous>(
                d => d.Set("plant/fluid/kind", "ethyleneGlycol"),
                AsItIs
            ),
            Studio<TubeLetsOxygenIn>(d => d.SetLoops("tube", "pex 17x2"), AsItIs),
        ];

    private static IEnumerable<RuleFixture> Service() =>
        [
            Studio<CircuitWithoutHeater>(RingOfItsOwn, AsItIs),
            Studio<FillValveMissing>(d => WithoutHosePoints(d).TakeOut("fill"), WithoutHosePoints),
            Studio<DrainValveMissing>(
                d => WithoutHosePoints(d).TakeOut("drain"),
                WithoutHosePoints
            ),
            Studio<CannotBePurged>(
                d => d.TakeOut("purge heater", "fill"),
                d => d.TakeOut("purge heater")
            ),
            Studio<DrainValveTooHigh>(
                d => d.Set("plant/items/strainer/height", "-0.2 m"),
                d => d.Set("plant/items/strainer/height", "0 m")
            ),
            Studio<ThermometersMissing>(d => d.TakeOut("return thermometer"), AsItIs),
            Studio<PressureGaugeMissing>(d => d.TakeOut("gauge"), AsItIs),
            Studio<CirculatorCannotBeIsolated>(
                d => d.Set("plant/items/primary pump/part", "circulator small"),
                d =>
                    d.Set("plant/items/primary pump/part", "circulator small")
                        .PutBehind("fill", "valve before", BallValve)
                        .PutBehind("primary pump", "valve behind", BallValve)
            ),
            Studio<StrainerMissing>(
                d => d.TakeOut("strainer"),
                d => d.Set("plant/items/strainer/part", "dirt separator 3/4")
            ),
            Studio<StrainerCannotBeIsolated>(d => d.TakeOut("strainer valve"), AsItIs),
        ];

    private static RuleFixture Studio<TRule>(
        Func<DesignEdits, DesignEdits> triggers,
        Func<DesignEdits, DesignEdits> spares
    )
        where TRule : ReviewRule =>
        new(typeof(TRule), () => triggers(Examples.Studio()), () => spares(Examples.Studio()));

    private static RuleFixture Cabin<TRule>(
        Func<DesignEdits, DesignEdits> triggers,
        Func<DesignEdits, DesignEdits> spares
    )
        where TRule : ReviewRule =>
        new(typeof(TRule), () => triggers(Examples.Cabin()), () => spares(Examples.Cabin()));

    private static DesignEdits AsItIs(DesignEdits design) => design;

    private static DesignEdits ShutBehindSeparator(DesignEdits design) =>
        design
            .PutBehind("separator", "vessel valve", BallValve)
            .Set("plant/items/vessel valve/shut", true);

    private static DesignEdits MoveVessel(DesignEdits design, string behind) =>
        design
            .TakeOut("vessel")
            .PutBehind(behind, "vessel", "vessel 18 L", "1.5 m")
            .Set("plant/items/vessel/precharge", "1 bar");

    private static DesignEdits MoveSeparator(DesignEdits design, string behind) =>
        design.TakeOut("separator").PutBehind(behind, "separator", "air separator 3/4", "1.7 m");

    private static DesignEdits StrongPrimaryBehindResistance(DesignEdits design, string coldFill) =>
        design
            .Set("plant/coldFill", coldFill)
            .Set("plant/items/vessel/precharge", "0.3 bar")
            .Make("vessel", Vessel("100 L"))
            .Set("plant/items/primary pump/part", "circulator large")
            .Set("plant/items/primary pump/speed", 3)
            .PutBehind("fill", "narrow", "narrow", "1.6 m")
            .Shelve("narrow", Purge("Kv 2.1"))
            .Make("purge heater", Purge("Kv 2.2"));

    private static DesignEdits LongerPipe(DesignEdits design, string length)
    {
        var run = design.Runs[1]!["run"]!.AsArray();
        run[1] = length;
        return design;
    }

    private static DesignEdits RingOfItsOwn(DesignEdits design)
    {
        design.Items["spare strainer"] = new JsonObject { ["part"] = "strainer 3/4" };
        design.Runs.Add(
            JsonNode.Parse(
                """
                { "pipe": "copper 22x1", "run": ["spare strainer.out", "1 m", "spare strainer.in"] }
                """
            )
        );
        return design;
    }

    private static DesignEdits SecondPump(DesignEdits design) =>
        design
            .PutBehind("primary pump", "second pump", "circulator large", "1.5 m")
            .Set("plant/items/second pump/speed", 3);

    private static DesignEdits ShutLoops(DesignEdits design, int count)
    {
        for (var i = 0; i < count; i++)
        {
            design.Loops[i]!["shut"] = true;
        }

        return design;
    }

    private static DesignEdits WithoutHosePoints(DesignEdits design) =>
        design
            .TakeOut("purge heater", "purge floor")
            .Make("manifold", Manifold("fillAndDrain", false));

    private static string ReliefValve(string opens, string capacity) =>
        $$"""{ "kind": "relief", "opens": "{{opens}}", "capacity": "{{capacity}}" }""";

    private static string Vessel(string size) => $$"""{ "kind": "vessel", "size": "{{size}}" }""";

    private static string Heater(string capacity, string minimum) =>
        $$"""{ "kind": "heater", "capacity": "{{capacity}}", "minimumFlow": "{{minimum}}", "kv": "Kv 2.5" }""";

    private static string Purge(string kv) =>
        $$"""{ "kind": "inline", "function": "purge", "kv": "{{kv}}" }""";

    private static string Tees(string spacing) =>
        $$"""{ "kind": "closelySpacedTees", "inner": "20 mm", "spacing": "{{spacing}}" }""";

    private static string Manifold(string key, bool value) =>
        new JsonObject
        {
            ["kind"] = "manifold",
            ["outlets"] = 5,
            ["vents"] = true,
            ["fillAndDrain"] = true,
            [key] = value,
        }.ToJsonString();

    private static string Pump(string end) =>
        $$"""
            {
              "kind": "circulator", "isolating": true, "speeds": [{ "curve": [
                { "flow": "0 L/min", "head": "3 m" },
                { "flow": "8 L/min", "head": "2.6 m" },
                { "flow": "{{end}}", "head": "1.5 m" }
              ] }]
            }
            """;

    private static JsonObject Store() =>
        JsonNode
            .Parse(
                """
                {
                  "indoor": "10 °C", "floorArea": "6 m²", "volume": "15 m³",
                  "elements": { "wall": { "kind": "wall", "area": "12 m²", "u": "0.3 W/m²K" } }
                }
                """
            )!
            .AsObject();
}
