using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Relief;

/// <summary>The relief valve must open before the weakest part gives way.</summary>
public sealed class ReliefValveAboveWeakestPart()
    : ReviewRule(
        new()
        {
            Id = "relief-valve-above-weakest-part",
            Title = "The relief valve opens above what the weakest part stands",
            Severity = Severity.Danger,
            Why =
                "The part bursts before the valve opens, and hot water escapes where nobody expects it.",
            LooksAt =
                "The lowest setting of the relief valves against the lowest rated pressure of all parts, pipes and tubes whose rating is known.",
            Source = "EN 12828:2012, 4.6.2 (from memory)",
            Page = Pages.Plant,
            Needs = Needs.Piping,
        }
    )
{
    private sealed record Rated(string Name, double MaxPa);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var graph = subject.Graph!;
        var lowest = graph
            .Parts<ReliefPart>()
            .OrderBy(relief => relief.Part.Opens.Si)
            .FirstOrDefault();
        var weakest = graph
            .Items.Where(item => item.Part.MaxPressure is not null)
            .Select(item => new Rated($"\"{item.Name}\"", item.Part.MaxPressure!.Value.Si))
            .Concat(
                graph
                    .Pipes()
                    .Where(pipe => pipe.Pipe.MaxPressure is not null)
                    .Select(pipe => new Rated($"the {pipe.Name}", pipe.Pipe.MaxPressure!.Value.Si))
            )
            .MinBy(rated => rated.MaxPa);
        if (lowest.Part is null || weakest is null || lowest.Part.Opens.Si <= weakest.MaxPa)
        {
            yield break;
        }

        var opens = subject.Show(lowest.Part.Opens.Si, Shown.Gauge);
        var stands = subject.Show(weakest.MaxPa, Shown.Gauge);
        yield return Find(
            DesignPlaces.Item(lowest.Placed.Name, "part"),
            $"\"{lowest.Placed.Name}\" opens at {opens}, but {weakest.Name} stands only {stands}.",
            $"Take a relief valve that opens at {stands} or below, or a stronger part."
        );
    }
}
