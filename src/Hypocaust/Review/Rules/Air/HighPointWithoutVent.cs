using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Air;

/// <summary>Air collects at the top.</summary>
public sealed class HighPointWithoutVent()
    : ReviewRule(
        new()
        {
            Id = "high-point-without-vent",
            Title = "The highest point has no vent",
            Severity = Severity.Poor,
            Why =
                "Air rises and stays at the highest point until somebody lets it out; enough of it stops the flow.",
            LooksAt =
                "Height of the highest item against that of the highest vent, separator or manifold with vents: more than 0.5 m is too much.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Piping,
            CausedBy = [typeof(AirRemovalMissing), typeof(AirSeparatorMissing)],
        }
    )
{
    private const double SlackM = 0.5;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var graph = subject.Graph!;
        var vents = graph
            .Inline(InlineFunction.AirSeparator)
            .Concat(graph.Tappings(TappingFunction.AirVent))
            .Concat(graph.Items.Where(item => item.Part is ManifoldPart { Vents: true }))
            .ToList();
        var highest = graph.Items.MaxBy(item => item.Item.Height.Si);
        if (highest is null || vents.Count == 0)
        {
            yield break;
        }

        var vent = vents.MaxBy(item => item.Item.Height.Si)!;
        if (highest.Item.Height.Si > vent.Item.Height.Si + SlackM)
        {
            yield return Find(
                DesignPlaces.Item(highest.Name, "height"),
                $"\"{highest.Name}\" is {subject.Show(highest.Item.Height.Si, Shown.Length)} above the floor; the highest vent, at \"{vent.Name}\", {subject.Show(vent.Item.Height.Si, Shown.Length)}.",
                "Put an air vent at the highest point of the pipe."
            );
        }
    }
}
