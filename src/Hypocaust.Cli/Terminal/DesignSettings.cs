using System.ComponentModel;
using Hypocaust.Design;
using Hypocaust.Problems;
using Hypocaust.Quantities;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Hypocaust.Cli.Terminal;

/// <summary>What every command takes that answers a design.</summary>
internal class DesignSettings : CommandSettings
{
    /// <summary>The design file.</summary>
    [CommandArgument(0, "<FILE>")]
    [Description("The design file.")]
    public string File { get; init; } = "";

    /// <summary>Whether to print JSON.</summary>
    [CommandOption("--json")]
    [Description("Print JSON in SI units instead of tables.")]
    public bool Json { get; init; }

    /// <summary>Units of the tables.</summary>
    [CommandOption("--units <UNITS>")]
    [Description("us or si; left out, as the design says.")]
    public string? Units { get; init; }

    /// <inheritdoc/>
    public override ValidationResult Validate() =>
        Units is null || Enum.TryParse<UnitSystem>(Units, ignoreCase: true, out _)
            ? ValidationResult.Success()
            : ValidationResult.Error($"\"{Units}\" is no system of units; write us or si.");

    /// <summary>The units asked for, or those of the design.</summary>
    public UnitSystem UnitsFor(HeatingDesign design) =>
        Units is null ? design.Units : Enum.Parse<UnitSystem>(Units, ignoreCase: true);

    /// <summary>Opens the design, or prints why not.</summary>
    public DesignDocument? Open()
    {
        var opened = DesignOnDisk.Open(File);
        if (opened.TryGet(out var design))
        {
            return design.Document;
        }

        ProblemPrinter.Print(Console.Error, File, TextForPictures(), opened.Problems);
        return null;
    }

    /// <summary>Prints what could not be answered, each problem with its place in the file.</summary>
    public void Report(DesignDocument document, IEnumerable<Problem> problems) =>
        ProblemPrinter.Print(
            Console.Error,
            File,
            document.Text,
            problems.Select(problem =>
                problem with
                {
                    Position = PositionOf(document, problem.Place),
                }
            )
        );

    // the value itself may be a default that stands nowhere; then its nearest owner does
    private static TextPosition? PositionOf(DesignDocument document, string place)
    {
        for (
            var path = place;
            path.Length > 0;
            path = path[..Math.Max(0, path.LastIndexOfAny(['.', '[']))]
        )
        {
            if (document.Places.TryGetValue(path, out var at))
            {
                return at;
            }
        }

        return null;
    }

    // only for the picture under a problem; a file that is gone or huge needs none
    private string? TextForPictures()
    {
        var info = new FileInfo(File);
        return info.Exists && info.Length <= DesignFile.LargestFile
            ? System.IO.File.ReadAllText(File)
            : null;
    }
}
