using System.Collections.Immutable;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Why;

/// <summary>Which values of the design a computed number follows most: each is moved a little and the whole study solved again.</summary>
public static class SensitivityRanking
{
    private const double Share = 0.01;
    private const double SmallestShare = 1e-6;

    /// <summary>The values that move a number most, the strongest first; values that move it by less than a millionth are left out.</summary>
    /// <param name="document">The design.</param>
    /// <param name="answerPath">Path of the number in the answer.</param>
    /// <param name="most">How many to name, 1 or more.</param>
    public static ImmutableArray<Sensitivity> Rank(
        DesignDocument document,
        string answerPath,
        int most
    )
    {
        if (AnswerPath.Read(Study.Solve(document.Design), answerPath) is not { } now)
        {
            return [];
        }

        return
        [
            .. DesignQuantities
                .Of(document.Design)
                .Select(placed => Try(document, placed, answerPath, now))
                .OfType<Sensitivity>()
                .Where(found => Math.Abs(found.Change) > SmallestShare * Math.Abs(now))
                .OrderByDescending(found => Math.Abs(found.Change))
                .Take(most),
        ];
    }

    // at the end of its bounds a value is moved the other way and the change turned round
    private static Sensitivity? Try(
        DesignDocument document,
        PlacedQuantity placed,
        string answerPath,
        double now
    ) => Move(document, placed, answerPath, now, +1) ?? Move(document, placed, answerPath, now, -1);

    private static Sensitivity? Move(
        DesignDocument document,
        PlacedQuantity placed,
        string answerPath,
        double now,
        int sign
    )
    {
        var value = placed.Value;
        var isTemperature = value.Kind == TemperatureKind.Kind;
        var step = isTemperature ? 1 : Share * value.Si;
        if (step == 0)
        {
            return null;
        }

        var moved = document.Edit(
            placed.Path,
            QuantityText.Exact(value.Si + (sign * step), value.Kind.Si)
        );
        return
            moved.TryGet(out var edited)
            && AnswerPath.Read(Study.Solve(edited.Design), answerPath) is { } then
            ? new Sensitivity(
                placed.Path,
                value.Text,
                isTemperature ? "1 K more" : "1 % more",
                sign * (then - now)
            )
            : null;
    }
}
