using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>Tees that are not close let one circulator disturb the other.</summary>
public sealed class CloselySpacedTeesTooFarApart()
    : ReviewRule(
        new()
        {
            Id = "closely-spaced-tees-too-far-apart",
            Title = "The two tees of a primary and a secondary circuit are too far apart",
            Severity = Severity.Poor,
            Why =
                "The pressure drop between them drives water through the other circuit, even when its circulator stands.",
            LooksAt = "Distance of the tees, centre to centre, against four inner diameters.",
            Source = "common practice, no source",
            Page = Pages.Plant,
            Needs = Needs.Piping,
        }
    )
{
    private const double Diameters = 4;

    // what nobody can measure on site
    private const double SlackM = 0.0005;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject) =>
        subject
            .Graph!.Parts<CloselySpacedTeesPart>()
            .Where(tees => tees.Part.Spacing.Si > (Diameters * tees.Part.Inner.Si) + SlackM)
            .Select(tees =>
                Find(
                    DesignPlaces.Item(tees.Placed.Name, "part"),
                    $"The tees of \"{tees.Placed.Name}\" are {subject.Show(tees.Part.Spacing.Si, Shown.Small)} apart; four diameters are {subject.Show(Diameters * tees.Part.Inner.Si, Shown.Small)}.",
                    $"Set them {subject.Show(Diameters * tees.Part.Inner.Si, Shown.Small)} apart or closer, centre to centre."
                )
            );
}
