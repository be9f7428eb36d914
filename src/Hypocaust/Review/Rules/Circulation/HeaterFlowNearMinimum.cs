using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>A heater just above its minimum flow switches on and off.</summary>
public sealed class HeaterFlowNearMinimum()
    : ReviewRule(
        new()
        {
            Id = "heater-flow-near-minimum",
            Title = "A heater gets hardly more flow than it needs",
            Severity = Severity.Poor,
            Why =
                "A little dirt in the strainer or one more closed loop, and the heater switches off.",
            LooksAt = "Flow through each heater against its stated minimum and a fifth more.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Plant,
        }
    )
{
    private const double Margin = 1.2;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        foreach (var heater in subject.Plant!.Heaters)
        {
            var least = heater.MinimumFlowM3PerS;
            if (heater.FlowM3PerS >= least && heater.FlowM3PerS < Margin * least)
            {
                yield return Find(
                    DesignPlaces.Item(heater.Item),
                    $"\"{heater.Item}\" gets {subject.Show(heater.FlowM3PerS, Shown.Flow)}; it switches off below {subject.Show(least, Shown.Flow)}.",
                    $"Aim for {subject.Show(Margin * least, Shown.Flow)} or more: run the circulator faster or take out resistance."
                );
            }
        }
    }
}
