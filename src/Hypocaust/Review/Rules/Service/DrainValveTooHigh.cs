using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Service;

/// <summary>Water drains only down to the valve.</summary>
public sealed class DrainValveTooHigh()
    : ReviewRule(
        new()
        {
            Id = "drain-valve-too-high",
            Title = "The lowest drain valve lies far above the lowest point",
            Severity = Severity.Note,
            Why =
                "What lies below the lowest valve stays full when you drain, and freezes or floods later.",
            LooksAt =
                "Height of the lowest valve for a hose against that of the lowest item: more than 0.5 m above it.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Piping,
        }
    )
{
    private const double SlackM = 0.5;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var graph = subject.Graph!;
        var lowest = graph.Items.MinBy(item => item.Item.Height.Si);
        var drain = HosePoints
            .All(graph)
            .Where(item => item.Part is not TappingPart { Function: TappingFunction.Fill })
            .MinBy(item => item.Item.Height.Si);
        if (
            lowest is not null
            && drain is not null
            && drain.Item.Height.Si > lowest.Item.Height.Si + SlackM
        )
        {
            yield return Find(
                DesignPlaces.Item(drain.Name, "height"),
                $"\"{lowest.Name}\" lies {subject.Show(lowest.Item.Height.Si, Shown.Length)} above the floor; the lowest valve for draining, \"{drain.Name}\", {subject.Show(drain.Item.Height.Si, Shown.Length)}.",
                $"Put a drain valve at \"{lowest.Name}\"."
            );
        }
    }
}
