using System.Text.Json;

namespace Hypocaust.Cli.Tests;

public sealed class CommandTests : IDisposable
{
    private readonly CommandLine cli = new();

    public void Dispose() => cli.Dispose();

    [Fact]
    public async Task New_writes_a_design_that_solves_and_refuses_to_overwrite_it()
    {
        var made = await cli.Execute("new", "shed");
        made.ExitCode.ShouldBe(0, made.Error);
        var solved = await cli.Execute("solve", "shed.hypocaust.json");
        solved.ExitCode.ShouldBe(0, solved.Error);
        solved.Output.ShouldContain("On the coldest day");
        var again = await cli.Execute("new", "shed");
        again.ExitCode.ShouldBe(2);
        again.Error.ShouldContain("already there");
    }

    [Theory]
    [InlineData("../escape")]
    [InlineData("a/b")]
    [InlineData("..")]
    public async Task New_stays_in_the_folder_whatever_the_name(string name)
    {
        var made = await cli.Execute("new", name);
        made.ExitCode.ShouldBe(0, made.Error);
        Directory.GetFiles(cli.Folder, "*.hypocaust.json").Length.ShouldBe(1);
    }

    [Theory]
    [InlineData("pottery-studio", 0)]
    [InlineData("ridge-cabin", 0)]
    [InlineData("damp-workshop", 1)]
    public async Task Review_exits_with_what_it_found(string example, int exitCode) =>
        (await cli.Execute("review", CommandLine.Example(example))).ExitCode.ShouldBe(exitCode);

    [Theory]
    [InlineData("pottery-studio")]
    [InlineData("ridge-cabin")]
    [InlineData("damp-workshop")]
    public async Task Tables_fit_eighty_columns(string example)
    {
        foreach (var command in new[] { "solve", "review" })
        {
            var run = await cli.Execute(command, CommandLine.Example(example));
            run.Output.Split('\n')
                .Max(line => line.TrimEnd().Length)
                .ShouldBeLessThanOrEqualTo(80, command);
        }
    }

    [Fact]
    public async Task Json_is_one_document_with_the_stable_names()
    {
        var run = await cli.Execute("solve", CommandLine.Example("pottery-studio"), "--json");
        using var json = JsonDocument.Parse(run.Output);
        json.RootElement.EnumerateObject()
            .Select(property => property.Name)
            .ShouldBe(["name", "space", "floor", "plant", "review", "problems"]);
    }

    [Fact]
    public async Task Units_can_be_asked_for()
    {
        (
            await cli.Execute("solve", CommandLine.Example("ridge-cabin"), "--units", "si")
        ).Output.ShouldContain("°C");
        var wrong = await cli.Execute(
            "solve",
            CommandLine.Example("ridge-cabin"),
            "--units",
            "imperial"
        );
        wrong.ExitCode.ShouldBe(64);
        wrong.Error.ShouldContain("write us or si");
    }

    [Fact]
    public async Task Every_problem_is_shown_with_file_line_column_remedy_and_a_picture()
    {
        var good = await File.ReadAllTextAsync(
            CommandLine.Example("pottery-studio"),
            TestContext.Current.CancellationToken
        );
        var path = cli.Write(
            "broken.hypocaust.json",
            good.Replace(
                    "\"designOutdoor\": \"-16 °C\"",
                    "\"designOutdoor\": -16",
                    StringComparison.Ordinal
                )
                .Replace("\"annualMean\"", "\"anualMean\"", StringComparison.Ordinal)
        );
        var run = await cli.Execute("solve", path);
        run.ExitCode.ShouldBe(2);
        run.Output.ShouldBeEmpty();
        run.Error.ShouldContain("$.site.designOutdoor");
        run.Error.ShouldContain("°F");
        run.Error.ShouldContain("annualMean");
        run.Error.Split('\n')
            .Count(line => line.TrimEnd().EndsWith('^'))
            .ShouldBeGreaterThanOrEqualTo(2);
        run.Error.ShouldMatch(@"broken\.hypocaust\.json:\d+:\d+: ");
    }

    [Theory]
    [InlineData("solve")]
    [InlineData("review")]
    public async Task A_file_that_is_not_there_is_said_plainly(string command)
    {
        var run = await cli.Execute(command, "nowhere.hypocaust.json");
        run.ExitCode.ShouldBe(2);
        run.Error.ShouldContain("nowhere.hypocaust.json");
        run.Error.ShouldNotContain("   at ");
    }

    [Fact]
    public async Task Why_explains_a_number_and_names_what_it_follows()
    {
        var run = await cli.Execute(
            "solve",
            CommandLine.Example("pottery-studio"),
            "--why",
            "floor.loops[0].running.heatUpW"
        );
        run.ExitCode.ShouldBe(0, run.Error);
        run.Output.ShouldContain("K_H");
        run.Output.ShouldContain("EN 1264-2");
        run.Output.ShouldContain("Most sensitive to");
        (
            await cli.Execute("solve", CommandLine.Example("pottery-studio"), "--why", "nothing")
        ).ExitCode.ShouldBe(64);
    }

    [Theory]
    [InlineData("design")]
    [InlineData("answer")]
    public async Task Schema_prints_a_JSON_Schema(string which)
    {
        var run = await cli.Execute("schema", which);
        using var json = JsonDocument.Parse(run.Output);
        json.RootElement.GetProperty("$schema").GetString()!.ShouldContain("2020-12");
    }

    [Theory]
    [InlineData("solv")]
    [InlineData("solve")]
    [InlineData("schema", "unknown")]
    public async Task A_wrong_command_line_says_what_would_do(params string[] arguments)
    {
        var run = await cli.Execute(arguments);
        run.ExitCode.ShouldBe(64);
        run.Error.ShouldNotBeEmpty();
        run.Error.ShouldNotContain("   at ");
    }
}
