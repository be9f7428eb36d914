using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>A loop that is shut heats nothing.</summary>
public sealed class LoopShut()
    : ReviewRule(
        new()
        {
            Id = "loop-shut",
            Title = "A loop is shut",
            Severity = Severity.Note,
            Why = "Its part of the floor stays cold; that is right only where you mean it.",
            LooksAt = "Whether a loop is written as shut.",
            Source = "common practice, no source",
            Page = Pages.Floor,
            Needs = Needs.Design,
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var loops = subject.Design.Floor?.Loops ?? [];
        for (var i = 0; i < loops.Length; i++)
        {
            if (loops[i].Shut)
            {
                yield return Find(
                    DesignPlaces.Loop(i, "shut"),
                    $"Loop \"{loops[i].Name}\" ({subject.Show(loops[i].Area.Si, Shown.Area)}) is shut.",
                    "Open it at the manifold, or leave it so if that floor shall stay cold."
                );
            }
        }
    }
}
