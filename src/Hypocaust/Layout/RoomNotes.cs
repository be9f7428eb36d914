using System.Collections.Immutable;

namespace Hypocaust.Layout;

/// <summary>What the person should know of a laid room, in words.</summary>
internal static class RoomNotes
{
    private const double PoorCoverage = 0.8;

    /// <summary>The notes.</summary>
    public static ImmutableArray<string> Of(
        RoomPlan plan,
        RoomLayout room,
        ImmutableArray<RoomPlan> all
    )
    {
        if (room.Loops.IsEmpty)
        {
            return [];
        }

        var notes = ImmutableArray.CreateBuilder<string>();
        if (room.CoverageShare < PoorCoverage)
        {
            notes.Add(
                LayoutProblems.Say(
                    $"Tube reaches {room.CoverageShare * 100:0} % of this room: corners, slanted walls or narrow places stay bare. A smaller spacing reaches further in."
                )
            );
        }

        var tightest = room.Loops.Min(loop => loop.TightestBendM);
        if (tightest < plan.BendRadiusM - 1e-6)
        {
            notes.Add(
                LayoutProblems.Say(
                    $"Some bends come to {tightest * 1000:0} mm radius and this tube asks {plan.BendRadiusM * 1000:0} mm: take a bend support there, a thinner tube or a wider spacing."
                )
            );
        }

        var closest = room.Loops.Min(loop => loop.ClosestM);
        if (closest < plan.SpacingM - 1e-6 && plan.EdgeSpacingM is null)
        {
            notes.Add(
                LayoutProblems.Say(
                    $"Hairpins are laid wider than their legs so that the tube does not kink; beside them tubes come to {closest * 1000:0} mm at the least."
                )
            );
        }

        var tightestPlan = all.Min(one => one.SpacingM);
        if (tightestPlan < plan.SpacingM - 1e-6)
        {
            notes.Add(
                LayoutProblems.Say(
                    $"Rooms on one manifold share one spacing: this room is laid at {tightestPlan * 1000:0} mm like its neighbour."
                )
            );
        }

        if (room.Loops.Any(loop => loop.Sleeves.Length > 0))
        {
            notes.Add(
                "Tube crosses a movement joint: put a sleeve of 0.3 m or more over it there, half on each side."
            );
        }

        return notes.ToImmutable();
    }
}
