using System.Collections.Immutable;
using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Papers.Drawing;
using Hypocaust.Quantities;

namespace Hypocaust.Papers.Pumps;

/// <summary>A circulator's curve against the curve of the piping, with the point at which they meet.</summary>
public static class PumpCurve
{
    private const double CubicMetresPerHour = 3600;

    /// <summary>Draws one circulator.</summary>
    /// <param name="design">The design.</param>
    /// <param name="answer">Its answer.</param>
    /// <param name="units">Units of the axes.</param>
    /// <param name="circulator">Name of the circulator's item.</param>
    /// <param name="shape">Screen (440 wide, two side by side) or phone.</param>
    /// <param name="date">Date for the title block; left out, none.</param>
    public static Sheet Draw(
        HeatingDesign design,
        Answer answer,
        UnitSystem units,
        string circulator,
        SheetShape shape = SheetShape.Wide,
        string? date = null
    )
    {
        var title = $"{circulator}: pump curve against system curve";
        var name = DrawingId.OfItem(circulator).Replace("item-", "pump-", StringComparison.Ordinal);
        var pump = answer.Plant?.Circulators.FirstOrDefault(one => one.Item == circulator);
        if (pump is null || !pump.Running || pump.CurveCoefficients is not [_, _, _])
        {
            var why = pump is { Running: false } ? "It is switched off." : "It has no answer yet.";
            return Blank.Sheet(name, title, $"{circulator}: {why}", shape);
        }

        return new PumpCurveSheet(pump, units, shape == SheetShape.Wide ? 440 : 390).Draw(
            name,
            title,
            date
        );
    }

    /// <summary>Draws every circulator of an answer.</summary>
    public static ImmutableArray<Sheet> DrawAll(
        HeatingDesign design,
        Answer answer,
        UnitSystem units,
        SheetShape shape = SheetShape.Wide,
        string? date = null
    ) =>
        [
            .. (answer.Plant?.Circulators ?? []).Select(pump =>
                Draw(design, answer, units, pump.Item, shape, date)
            ),
        ];

    /// <summary>Head of a curve at a flow, m.</summary>
    internal static double HeadM(ImmutableArray<double> coefficients, double flowM3PerS)
    {
        var flow = flowM3PerS * CubicMetresPerHour;
        return coefficients[0] + (coefficients[1] * flow) + (coefficients[2] * flow * flow);
    }
}
