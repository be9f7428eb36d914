using Hypocaust.Design;
using Hypocaust.Web.Session;

namespace Hypocaust.Web.Tests.Session;

public sealed class EditJournalTests : IDisposable
{
    private readonly Folder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_killed_program_finds_every_step_again()
    {
        // no Save and no farewell: disposing only lets go of the file, as the system does for a killed program
        using (var session = Run())
        {
            session.Edit(Designs.Edit(Designs.SetPoint, "38 °C"));
            session.Edit(Designs.Edit("$.name", "Barn"));
            session.Undo();
            session.Edit(Designs.Edit("$.site.altitude", "300 m"));
            session.Edit(Designs.Edit(Designs.SetPoint, "nonsense"));
        }

        using var next = Run();

        next.Written(Designs.SetPoint).ShouldBe("38 °C");
        next.Written("$.name").ShouldBe("Shed");
        next.Written("$.site.altitude").ShouldBe("300 m");
        next.View.Restored!.Count.ShouldBe(4);
        next.View.Rejections.ShouldBeEmpty();
        next.Undo();
        next.Undo();
        next.View.Present.Document.Text.ShouldBe(Designs.Small.Text);
    }

    [Fact]
    public void An_opened_file_is_brought_back_whole()
    {
        using (var session = Run())
        {
            session.Open("barn.json", DesignFile.New("Barn"));
            session.Edit(Designs.Edit("$.site.altitude", "300 m"));
        }

        using var next = Run();

        next.View.Present.Design.Name.ShouldBe("Barn");
        next.View.FileName.ShouldBe("barn.json");
        next.Written("$.site.altitude").ShouldBe("300 m");
    }

    [Fact]
    public void Discarded_edits_are_gone_for_good()
    {
        using (var session = Run())
        {
            session.Edit(Designs.Edit(Designs.SetPoint, "38 °C"));
        }

        using (var next = Run())
        {
            next.DiscardRestored();
            next.View.Present.Document.Text.ShouldBe(Designs.Small.Text);
        }

        using var last = Run();
        last.View.Restored.ShouldBeNull();
        last.View.Present.Document.Text.ShouldBe(Designs.Small.Text);
    }

    [Fact]
    public void A_line_cut_off_in_the_middle_costs_that_step_alone()
    {
        using (var session = Run())
        {
            session.Edit(Designs.Edit(Designs.SetPoint, "38 °C"));
            session.Edit(Designs.Edit("$.name", "Barn"));
        }

        var text = File.ReadAllText(JournalFile);
        File.WriteAllText(JournalFile, text[..^20]);
        using (var next = Run())
        {
            next.Written(Designs.SetPoint).ShouldBe("38 °C");
            next.Written("$.name").ShouldBe("Shed");
            next.Edit(Designs.Edit("$.name", "Mill"));
        }

        using var last = Run();
        last.Written("$.name").ShouldBe("Mill");
    }

    [Fact]
    public void Steps_from_another_text_are_set_aside_not_replayed()
    {
        using (var journal = EditJournal.TryOpen(JournalFile, TimeProvider.System)!)
        {
            journal.Restart("another text");
            journal.Write(JournalStep.Edited, Designs.Edit(Designs.SetPoint, "38 °C"));
        }

        using var session = Run();

        session.View.Present.Document.Text.ShouldBe(Designs.Small.Text);
        session.View.Notice.ShouldNotBeNull().ShouldContain("kept in");
        Directory.GetFiles(folder.Path).Length.ShouldBe(2);
    }

    [Fact]
    public void A_journal_that_another_program_holds_is_left_alone_and_said()
    {
        using var first = Run();

        using var second = Run();

        second.View.Notice.ShouldNotBeNull().ShouldContain("not kept on disk");
    }

    [Fact]
    public void Without_edits_no_file_is_left_behind()
    {
        Run().Dispose();

        Directory.GetFiles(folder.Path).ShouldBeEmpty();
    }

    private string JournalFile => folder.File("shed.unsaved");

    private DesignSession Run() =>
        Designs.Session(EditJournal.TryOpen(JournalFile, TimeProvider.System));
}
