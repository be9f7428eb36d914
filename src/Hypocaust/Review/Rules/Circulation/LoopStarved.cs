using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;

namespace Hypocaust.Review.Rules.Circulation;

/// <summary>A loop must get its share of the water.</summary>
public sealed class LoopStarved()
    : ReviewRule(
        new()
        {
            Id = "loop-starved",
            Title = "A loop gets far less water than the others",
            Severity = Severity.Poor,
            Why = "Its floor stays cooler than the rest, whatever the thermostat says.",
            LooksAt =
                "Flow of each open loop over its area against the mean of all: less than half is poor, none will not work.",
            Source = "common practice, no source",
            Page = Pages.Floor,
            Needs = Needs.Floor | Needs.Plant,
            CausedBy = [typeof(LoopTooLong)],
        }
    )
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(ReviewSubject subject)
    {
        var loops = subject.Floor!.Loops;
        var running = loops.Where(loop => loop.Running is { FlowM3PerS: not 0 }).ToList();
        if (running.Count == 0)
        {
            yield break;
        }

        var mean =
            running.Sum(loop => Math.Abs(loop.Running!.FlowM3PerS))
            / running.Sum(loop => loop.AreaM2);
        for (var i = 0; i < loops.Length; i++)
        {
            var flow = Math.Abs(loops[i].Running?.FlowM3PerS ?? 0);
            var share = mean * loops[i].AreaM2;
            if (subject.Design.Floor!.Loops[i].Shut || flow >= share / 2)
            {
                continue;
            }

            yield return Find(
                DesignPlaces.Loop(i),
                $"Loop \"{loops[i].Name}\" ({subject.Show(loops[i].LengthM, Shown.Length)}) gets {subject.Show(flow, Shown.Flow)}; its share by area would be {subject.Show(share, Shown.Flow)}.",
                "Open its valve and throttle the others, or split it into shorter loops.",
                flow == 0 ? Severity.WillNotWork : null
            );
        }
    }
}
