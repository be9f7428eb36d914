using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>Where one circulator stands, another must not push water through it unseen.</summary>
public sealed class WaterPassesStoppedCirculator()
    : ReviewRule(
        new()
        {
            Id = "water-passes-stopped-circulator",
            Title = "Water passes a circulator that stands",
            Severity = Severity.Poor,
            Why =
                "Another circulator drives water through a circuit that should rest: floors warm when nobody asks, or heat is lost.",
            LooksAt =
                "Flow through each switched-off circulator while another one runs: more than a twentieth of the largest flow.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Plant,
        }
    )
{
    private const double Share = 0.05;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var pumps = subject.Plant!.Circulators;
        var largest = pumps.Select(pump => Math.Abs(pump.FlowM3PerS)).DefaultIfEmpty(0).Max();
        foreach (var pump in pumps.Where(one => !one.Running))
        {
            if (pumps.Any(one => one.Running) && Math.Abs(pump.FlowM3PerS) > Share * largest)
            {
                yield return Find(
                    DesignPlaces.Item(pump.Item),
                    $"\"{pump.Item}\" stands, yet {subject.Show(Math.Abs(pump.FlowM3PerS), Shown.Flow)} pass it.",
                    "Put a check valve behind it, or part the circuits with closely spaced tees."
                );
            }
        }
    }
}
