using Hypocaust.Web.Session;

namespace Hypocaust.Web.Tests.Session;

public class HistoryTests
{
    [Fact]
    public void Undo_and_redo_walk_the_same_way_back_and_forth()
    {
        var history = History<int>.From(1).Then(2).Then(3);

        var back = history.Undo().Undo();

        back.Present.ShouldBe(1);
        back.CanUndo.ShouldBeFalse();
        back.Redo().Redo().Present.ShouldBe(3);
        back.Redo().Redo().CanRedo.ShouldBeFalse();
    }

    [Fact]
    public void A_new_step_forgets_what_was_undone()
    {
        var history = History<int>.From(1).Then(2).Undo().Then(5);

        history.CanRedo.ShouldBeFalse();
        history.Undo().Present.ShouldBe(1);
    }

    [Fact]
    public void At_either_end_there_is_nowhere_to_go()
    {
        var history = History<int>.From(1);

        history.Undo().ShouldBeSameAs(history);
        history.Redo().ShouldBeSameAs(history);
    }
}
