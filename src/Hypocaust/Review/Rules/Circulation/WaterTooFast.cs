using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Plant;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>Water that runs too fast eats copper.</summary>
public sealed class WaterTooFast()
    : ReviewRule(
        new()
        {
            Id = "water-too-fast",
            Title = "Water runs too fast in a copper pipe",
            Severity = Severity.Poor,
            Why = "Fast water hisses and wears copper thin at elbows.",
            LooksAt =
                "Velocity in each piece of copper pipe against 1.5 m/s, above 60 °C against 1.2 m/s.",
            Source = "Copper Tube Handbook (from memory)",
            Page = Pages.Plant,
            Needs = Needs.Plant,
        }
    )
{
    private const double ColdMPerS = 1.5;
    private const double HotMPerS = 1.2;
    private const double HotC = 60;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var fast = subject
            .Graph!.Branches.OfType<PlantBranch.InPipe>()
            .Zip(subject.Plant!.Pipes)
            .Where(pair => pair.First.Pipe.Material == PipeMaterial.Copper)
            .Where(pair => Math.Abs(pair.Second.VelocityMPerS) > Limit(pair.Second))
            .ToList();
        if (fast.Count == 0)
        {
            yield break;
        }

        var (piece, answer) = fast.MaxBy(pair => Math.Abs(pair.Second.VelocityMPerS));
        var others = fast.Count > 1 ? $", and too fast in {fast.Count - 1} more" : "";
        yield return Find(
            DesignPlaces.Run(piece.Join.Run, "pipe"),
            $"Between {answer.From} and {answer.To} the water runs at {subject.Show(Math.Abs(answer.VelocityMPerS), Shown.Velocity)} through \"{answer.Pipe}\" ({subject.Show(answer.InnerM, Shown.Small)} inside){others}; {subject.Show(Limit(answer), Shown.Velocity)} is the most.",
            "Take the next larger size, or run the circulator slower."
        );
    }

    private static double Limit(PipeAnswer pipe) => pipe.InC > HotC ? HotMPerS : ColdMPerS;
}
