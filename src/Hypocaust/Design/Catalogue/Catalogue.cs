using System.Reflection;
using Hypocaust.Design.Shapes;
using Hypocaust.Design.Source;
using Hypocaust.Problems;

namespace Hypocaust.Design;

/// <summary>The built-in list of generic parts, without makers.</summary>
public static class Catalogue
{
    private static readonly Lazy<Named<Part>> Loaded = new(Load);

    /// <summary>The parts by name; read when first asked for.</summary>
    public static Named<Part> Parts => Loaded.Value;

    private static Named<Part> Load()
    {
        using var stream = Assembly
            .GetExecutingAssembly()
            .GetManifestResourceStream("design/catalogue.json")!;
        return Read(stream).Value.Parts;
    }

    internal static Result<CatalogueFile> Read(Stream stream) => SourceText.From(stream).Then(Read);

    private static Result<CatalogueFile> Read(SourceText source)
    {
        var problems = new ProblemList();
        var root = SourceReader.Read(source, problems);
        var file = root is null
            ? null
            : ShapeBook
                .Designs.Record<CatalogueFile>()
                .Read(root, Place.Root, new Reading(source, problems));
        return problems.IsEmpty
            ? (CatalogueFile)file!
            : Result<CatalogueFile>.Failed(problems.ToArray());
    }
}

/// <summary>A file that holds parts only.</summary>
internal sealed record CatalogueFile(
    [Meaning("Where the figures come from.")] string Note,
    [Meaning("The parts by name.")] Named<Part> Parts
);
