using Hypocaust.Design;
using Hypocaust.Quantities;
using Hypocaust.Web.Session;

namespace Hypocaust.Web.Tests.Session;

public class DesignSessionTests
{
    [Fact]
    public void Edit_Accepted_ChangesTextAnswerAndTellsTheWindows()
    {
        using var session = Designs.Session();
        var told = 0;
        session.Changed += (_, _) => told++;
        var lossBefore = session.View.Present.Answer.Space!.DesignLossW;

        session.Edit(Designs.Edit("$.site.designOutdoor", "-20 °C"));

        session.Written("$.site.designOutdoor").ShouldBe("-20 °C");
        session.View.Present.Answer.Space!.DesignLossW.ShouldBeGreaterThan(lossBefore);
        told.ShouldBe(1);
        session.View.History.CanUndo.ShouldBeTrue();
    }

    [Fact]
    public void Edit_Refused_KeepsTheAnswerAndWhatWasTyped()
    {
        using var session = Designs.Session();
        var before = session.View.Present;

        session.Edit(Designs.Edit(Designs.SetPoint, "38"));

        session.View.Present.ShouldBeSameAs(before);
        var rejection = session.View.Rejections[Designs.SetPoint];
        rejection.Text.ShouldBe("38");
        rejection.Problems.ShouldHaveSingleItem().Code.ShouldBe("no-unit");
        session.View.History.CanUndo.ShouldBeFalse();
    }

    [Fact]
    public void Edit_AcceptedAfterARefusal_ClearsTheRefusal()
    {
        using var session = Designs.Session();
        session.Edit(Designs.Edit(Designs.SetPoint, "38"));

        session.Edit(Designs.Edit(Designs.SetPoint, "38 °C"));

        session.View.Rejections.ShouldBeEmpty();
        session.Written(Designs.SetPoint).ShouldBe("38 °C");
    }

    [Fact]
    public void Edit_Emptied_TakesTheValueOutSoThatTheDefaultHolds()
    {
        using var session = Designs.Session();

        session.Edit(Designs.Edit("$.building.zones.room.airChange", ""));

        session.Written("$.building.zones.room.airChange").ShouldBeNull();
        session.View.Present.Design.Building.Zones["room"].AirChange.IsAssumed.ShouldBeTrue();
    }

    [Fact]
    public void Undo_and_redo_give_the_very_texts_back()
    {
        using var session = Designs.Session();
        var first = session.View.Present.Document.Text;
        session.Edit(Designs.Edit(Designs.SetPoint, "38 °C"));
        var second = session.View.Present.Document.Text;

        session.Undo();
        session.View.Present.Document.Text.ShouldBe(first);
        session.Redo();
        session.View.Present.Document.Text.ShouldBe(second);
    }

    [Fact]
    public void Units_are_a_value_of_the_design_like_any_other()
    {
        using var session = Designs.Session();

        session.Edit(Designs.Edit("$.units", "us"));

        session.View.Present.Units.ShouldBe(UnitSystem.Us);
    }

    [Fact]
    public void Open_Broken_ListsEveryProblemAndKeepsTheDesign()
    {
        using var session = Designs.Session();
        var before = session.View.Present;
        var broken = Designs
            .Small.Text.Replace("\"40 °C\"", "\"40\"", StringComparison.Ordinal)
            .Replace("\"-12 °C\"", "\"12 bar\"", StringComparison.Ordinal);

        session.Open("broken.json", broken);

        session.View.Present.ShouldBeSameAs(before);
        session
            .View.Unreadable!.Problems.Select(problem => problem.Code)
            .ShouldBe(["wrong-dimension", "no-unit"], ignoreOrder: true);
        session.View.Unreadable.Problems.ShouldAllBe(problem => problem.Position != null);
        session.Dismiss();
        session.View.Unreadable.ShouldBeNull();
    }

    [Fact]
    public void Open_Sound_TakesItsPlaceAndUndoLeadsBack()
    {
        using var session = Designs.Session();

        session.Open("barn.json", DesignFile.New("Barn"));

        session.View.Present.Design.Name.ShouldBe("Barn");
        session.View.FileName.ShouldBe("barn.json");
        session.View.IsSaved.ShouldBeFalse();
        session.Undo();
        session.View.Present.Design.Name.ShouldBe("Shed");
    }

    [Fact]
    public void Save_writes_the_text_to_the_file_of_the_design()
    {
        using var folder = new Folder();
        var path = folder.File("shed.hypocaust.json");
        File.WriteAllText(path, Designs.Small.Text);
        var opened = DesignOnDisk.Open(path).Value;
        using var session = Designs.Session(place: new DesignPlace(path, opened.Stamp));
        session.View.IsSaved.ShouldBeTrue();
        session.Edit(Designs.Edit(Designs.SetPoint, "38 °C"));
        session.View.IsSaved.ShouldBeFalse();

        session.Save();

        session.View.IsSaved.ShouldBeTrue();
        File.ReadAllText(path).ShouldBe(session.View.Present.Document.Text);
    }

    [Fact]
    public void Save_OfAFileThatSomeoneElseChanged_SaysSoAndLeavesIt()
    {
        using var folder = new Folder();
        var path = folder.File("shed.hypocaust.json");
        File.WriteAllText(path, Designs.Small.Text);
        var opened = DesignOnDisk.Open(path).Value;
        using var session = Designs.Session(place: new DesignPlace(path, opened.Stamp));
        session.Edit(Designs.Edit(Designs.SetPoint, "38 °C"));
        File.WriteAllText(path, "theirs");

        session.Save();

        File.ReadAllText(path).ShouldBe("theirs");
        session.View.Notice.ShouldNotBeNull().ShouldStartWith("Not saved: ");
        session.View.IsSaved.ShouldBeFalse();
    }
}
