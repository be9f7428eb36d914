namespace Hypocaust.Tests.Review;

/// <summary>The designs in the repository's folder of examples.</summary>
internal static class Examples
{
    public static string Folder => Path.Combine(AppContext.BaseDirectory, "examples");

    public static DesignEdits Studio() => Named("pottery-studio");

    public static DesignEdits Cabin() => Named("ridge-cabin");

    public static DesignEdits Workshop() => Named("damp-workshop");

    public static IEnumerable<string> All() =>
        Directory
            .EnumerateFiles(Folder, "*.hypocaust.json")
            .Select(file =>
                Path.GetFileName(file).Replace(".hypocaust.json", "", StringComparison.Ordinal)
            )
            .Order(StringComparer.Ordinal);

    public static DesignEdits Named(string name) =>
        DesignEdits.Of(File.ReadAllText(Path.Combine(Folder, name + ".hypocaust.json")));
}
