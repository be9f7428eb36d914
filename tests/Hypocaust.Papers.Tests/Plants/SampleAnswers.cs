using System.Collections.Immutable;
using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Papers.Piping;

namespace Hypocaust.Papers.Tests.Plants;

/// <summary>Answers with made-up figures in the right places; they are drawn, not checked.</summary>
internal static class SampleAnswers
{
    private const double Density = 1020;

    public static Answer None(HeatingDesign design) =>
        new(design.Name, null, null, null, new ReviewAnswer([], 0, []), []);

    public static Answer Of(
        HeatingDesign design,
        double flowKgPerS = 0.19,
        double betweenM3PerS = 3e-5
    )
    {
        var bare = PipingGraph.Of(design, None(design));
        var pressure = 150000.0;
        var items = bare
            .InOrder.Select(item =>
            {
                pressure -= 1500;
                return new ItemAnswer(
                    item.Name,
                    item.Kind.ToString(),
                    item.Item.Part,
                    item.Name.Contains("return", StringComparison.Ordinal) ? 30.8 : 38,
                    pressure,
                    item.IsTapped ? null : flowKgPerS,
                    item.IsTapped ? null
                        : item.Kind == SymbolKind.Circulator ? -18000
                        : 1500,
                    1
                );
            })
            .ToImmutableArray();
        return new(
            design.Name,
            Space(),
            Floor(design, flowKgPerS),
            new PlantAnswer(
                new FluidAnswer("propylene glycol 30 %", 0.3, -13, 35, Density, 3860, 0.0018),
                Heater(bare),
                Heater(bare) is { } heater ? [heater] : [],
                [
                    .. bare
                        .InOrder.Where(item => item.Kind == SymbolKind.Circulator)
                        .Select(item => Pump(item.Name, flowKgPerS)),
                ],
                [
                    .. bare
                        .InOrder.Where(item => item.Kind == SymbolKind.SpacedTees)
                        .Select(item => new TeesAnswer(
                            item.Name,
                            1.9e-4,
                            1.6e-4,
                            betweenM3PerS,
                            38,
                            38,
                            30.8
                        )),
                ],
                items,
                [.. bare.Pieces.Select(piece => Pipe(piece, flowKgPerS))],
                new FillAnswer(
                    0.04,
                    0.012,
                    0.0009,
                    40,
                    120000,
                    145000,
                    0.008,
                    0.012,
                    100000,
                    200000
                ),
                120,
                new ConvergenceAnswer(true, 1e-10, 1e-12, 1e-11, 4, 20, "Converged."),
                []
            ),
            new ReviewAnswer([], 0, []),
            []
        );
    }

    private static HeaterAnswer? Heater(PipingGraph bare) =>
        bare.InOrder.FirstOrDefault(item => item.Kind == SymbolKind.Heater) is { } heater
            ? new(
                heater.Name,
                HeaterState.HoldsSetPoint,
                4600,
                9000,
                38,
                31,
                38,
                0.19,
                1.9e-4,
                1e-4
            )
            : null;

    private static CirculatorAnswer Pump(string name, double flowKgPerS) =>
        new(
            name,
            2,
            3,
            true,
            flowKgPerS / Density,
            1.8,
            18000,
            140000,
            35,
            5.5e-4,
            false,
            [4, -0.3, -1.2]
        );

    private static PipeAnswer Pipe(Piece piece, double flowKgPerS)
    {
        var back =
            piece.FromItem.Contains("return", StringComparison.Ordinal)
            || piece.FromPort is "return" or "primaryOut"
            || piece.ToPort is "secondaryIn"
            || piece.ToItem.EndsWith("boiler", StringComparison.Ordinal)
            || piece.FromItem is "strainer" or "purge valve" or "drain";
        var t = back ? 30.8 : 38.0;
        return new(
            $"{piece.FromItem}.{piece.FromPort}",
            $"{piece.ToItem}.{piece.ToPort}",
            "copper",
            1,
            0.02,
            flowKgPerS,
            flowKgPerS / Density,
            0.6,
            800,
            flowKgPerS == 0 ? null : t,
            flowKgPerS == 0 ? null : t - 0.1,
            5
        );
    }

    private static FloorAnswer Floor(HeatingDesign design, double flowKgPerS) =>
        new(
            5200,
            4500,
            400,
            38,
            30.8,
            37,
            true,
            [new("studio", 18, 55, 5200, 4500, 37)],
            [
                .. (design.Floor?.Loops ?? []).Select(
                    (loop, i) =>
                        new LoopAnswer(
                            loop.Name,
                            loop.Zone,
                            18,
                            loop.Area.Si,
                            loop.Spacing.Si,
                            4,
                            false,
                            82.4 - (6 * i),
                            0.012,
                            4.2,
                            Factors,
                            9.5,
                            100,
                            29,
                            "within 3 %",
                            new LoopRunning(
                                flowKgPerS / 5,
                                flowKgPerS / 5 / Density,
                                0.28,
                                3400,
                                0,
                                4.2,
                                Density,
                                0.0018,
                                11200,
                                34,
                                38,
                                30.4 + (0.4 * i),
                                968 - (30 * i),
                                80,
                                82,
                                26.1,
                                28.3
                            )
                        )
                ),
            ]
        );

    private static readonly TransmissionFactors Factors = new(
        6.7,
        0.8,
        1.2,
        0.6,
        1.05,
        -0.2,
        1.03,
        0.1,
        1,
        0
    );

    private static SpaceAnswer Space() =>
        new(
            -16,
            6100,
            5200,
            [
                new(
                    "studio",
                    18,
                    60,
                    180,
                    0.5,
                    6100,
                    5200,
                    1200,
                    1040,
                    0,
                    [
                        Element("north wall", "wall", 1250),
                        Element("south wall", "wall", 800),
                        Element("roof", "roof", 1180),
                        Element("windows", "window", 760),
                        Element("barn door", "door", 170),
                        Element("ground", "ground", 900),
                    ]
                ),
            ]
        );

    private static ElementLossAnswer Element(string name, string kind, double lossW) =>
        new(name, kind, 20, 0.3, 0.05, -16, false, lossW, "layers");
}
