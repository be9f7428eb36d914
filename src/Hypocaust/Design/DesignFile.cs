using System.Reflection;
using Hypocaust.Design.Checks;
using Hypocaust.Design.Shapes;
using Hypocaust.Design.Source;
using Hypocaust.Problems;

namespace Hypocaust.Design;

/// <summary>Reads design files: text in, a checked design or every problem out. It touches streams only; <see cref="DesignOnDisk"/> knows files.</summary>
public static class DesignFile
{
    /// <summary>Largest file that is read, in bytes (4 MiB).</summary>
    public const int LargestFile = SourceText.LargestFile;

    /// <summary>How design files are named.</summary>
    public const string Extension = ".hypocaust.json";

    /// <summary>Reads a design from a stream of UTF-8 text. Of a stream longer than <see cref="LargestFile"/> no more is read than shows that it is too long.</summary>
    /// <param name="stream">The file.</param>
    public static Result<DesignDocument> Read(Stream stream) =>
        SourceText.From(stream).Then(source => Read(source));

    /// <summary>Reads a design from a text.</summary>
    /// <param name="text">The text of the file.</param>
    public static Result<DesignDocument> Read(string text) =>
        SourceText.From(text).Then(source => Read(source));

    /// <summary>The text of a small, valid design to start from.</summary>
    /// <param name="name">What the person calls the design.</param>
    public static string New(string name)
    {
        using var stream = Assembly
            .GetExecutingAssembly()
            .GetManifestResourceStream("design/new.hypocaust.json")!;
        using var reader = new StreamReader(stream);
        return reader
            .ReadToEnd()
            .Replace("\"NAME\"", PlainJson.Quote(name), StringComparison.Ordinal);
    }

    internal static Result<DesignDocument> Read(SourceText source)
    {
        var problems = new ProblemList();
        var root = SourceReader.Read(source, problems);
        if (root is null)
        {
            return Result<DesignDocument>.Failed(problems.ToArray());
        }

        DuplicateKeys.Report(root, Place.Root, source, problems);
        var reading = new Reading(source, problems);
        var design =
            ShapeBook.Designs.Record<HeatingDesign>().Read(root, Place.Root, reading)
            as HeatingDesign;
        if (design is not null && !reading.IsBroken)
        {
            ReferenceCheck.Report(design, new CheckReport(root, reading));
        }

        return problems.IsEmpty
            ? new DesignDocument(design!, source, root)
            : Result<DesignDocument>.Failed(problems.ToArray());
    }
}
