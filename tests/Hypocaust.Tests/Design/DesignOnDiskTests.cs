using Hypocaust.Design;

namespace Hypocaust.Tests.Design;

/// <summary>A save happens whole or not at all.</summary>
public sealed class DesignOnDiskTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("hypocaust-test-").FullName;

    private string FilePath => System.IO.Path.Combine(folder, "shed.hypocaust.json");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Save_then_open_gives_the_same_text_and_stamp()
    {
        var document = TestDesigns.Read("\ufeff" + TestDesigns.Workshop);
        var stamp = DesignOnDisk.Save(FilePath, document).Value;
        var opened = DesignOnDisk.Open(FilePath).Value;
        opened.Document.Text.ShouldBe(document.Text);
        opened.Stamp.ShouldBe(stamp);
        Directory.GetFiles(folder).ShouldBe([FilePath]);
    }

    [Fact]
    public void Earlier_versions_stay_beside_the_file_five_of_them()
    {
        var document = TestDesigns.Read(TestDesigns.Workshop);
        var stamp = DesignOnDisk.Save(FilePath, document).Value;
        for (var i = 1; i <= 7; i++)
        {
            document = document.Edit("$.name", $"edit {i}").Value;
            stamp = DesignOnDisk.Save(FilePath, document, stamp).Value;
        }

        Directory.GetFiles(folder).Length.ShouldBe(6);
        NameIn(FilePath).ShouldBe("edit 7");
        NameIn(FilePath + ".1~").ShouldBe("edit 6");
        NameIn(FilePath + ".5~").ShouldBe("edit 2");
    }

    [Fact]
    public void A_file_that_somebody_else_changed_is_not_overwritten()
    {
        var document = TestDesigns.Read(TestDesigns.Workshop);
        var stamp = DesignOnDisk.Save(FilePath, document).Value;
        File.WriteAllText(FilePath, "theirs");
        var problem = DesignOnDisk.Save(FilePath, document, stamp).Problems.ShouldHaveSingleItem();
        problem.Code.ShouldBe("changed-since");
        problem.Place.ShouldBe(FilePath);
        File.ReadAllText(FilePath).ShouldBe("theirs");
        File.Delete(FilePath);
        DesignOnDisk.Save(FilePath, document, stamp).Problems[0].Code.ShouldBe("changed-since");
        Directory.GetFiles(folder).ShouldBeEmpty();
    }

    [Fact]
    public void A_save_that_cannot_finish_leaves_the_file_and_no_rubbish()
    {
        var document = TestDesigns.Read(TestDesigns.Workshop);
        DesignOnDisk.Save(FilePath, document).Succeeded.ShouldBeTrue();
        Directory.CreateDirectory(FilePath + ".1~"); // the version before cannot be kept
        var edited = document.Edit("$.name", "new").Value;
        DesignOnDisk
            .Save(FilePath, edited)
            .Problems.ShouldHaveSingleItem()
            .Code.ShouldBe("cannot-write");
        NameIn(FilePath).ShouldBe("Boat workshop");
        Directory.GetFiles(folder).ShouldBe([FilePath]);
    }

    [Fact]
    public void A_link_stays_a_link_and_its_file_is_replaced()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Links need rights of their own on Windows.");
        var document = TestDesigns.Read(TestDesigns.Workshop);
        DesignOnDisk.Save(FilePath, document).Succeeded.ShouldBeTrue();
        var link = System.IO.Path.Combine(folder, "link.hypocaust.json");
        File.CreateSymbolicLink(link, FilePath);
        DesignOnDisk.Save(link, document.Edit("$.name", "new").Value).Succeeded.ShouldBeTrue();
        File.ResolveLinkTarget(link, returnFinalTarget: true)!.FullName.ShouldBe(FilePath);
        NameIn(FilePath).ShouldBe("new");
    }

    [Fact]
    public void A_folder_in_which_nobody_may_write_is_a_problem()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("Folder permissions work otherwise on Windows.");
            return;
        }

        Assert.SkipWhen(Environment.IsPrivilegedProcess, "The superuser may write everywhere.");
        File.SetUnixFileMode(folder, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        try
        {
            var document = TestDesigns.Read(TestDesigns.Workshop);
            DesignOnDisk
                .Save(FilePath, document)
                .Problems.ShouldHaveSingleItem()
                .Code.ShouldBe("cannot-write");
        }
        finally
        {
            File.SetUnixFileMode(
                folder,
                UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute
            );
        }
    }

    [Theory]
    [InlineData("nowhere/shed.hypocaust.json")]
    [InlineData("")]
    public void A_path_that_is_no_file_is_a_problem(string name)
    {
        var path = System.IO.Path.Combine(folder, name);
        DesignOnDisk.Open(path).Problems.ShouldHaveSingleItem().Code.ShouldBe("cannot-read");
        DesignOnDisk
            .Save(path, TestDesigns.Read(TestDesigns.Workshop))
            .Problems.ShouldHaveSingleItem()
            .Code.ShouldBe("cannot-write");
    }

    private static string NameIn(string path) => DesignOnDisk.Open(path).Value.Document.Design.Name;
}
