using Hypocaust.Design;

namespace Hypocaust.Papers.Tests;

/// <summary>The example designs of the repository.</summary>
internal static class Examples
{
    public static IEnumerable<HeatingDesign> All =>
        Directory
            .GetFiles(Path.Combine(AppContext.BaseDirectory, "examples"), "*.hypocaust.json")
            .Order(StringComparer.Ordinal)
            .Select(path => DesignFile.Read(File.ReadAllText(path)).Value.Design);
}
