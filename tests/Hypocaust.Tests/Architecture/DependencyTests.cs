using System.Text.RegularExpressions;

namespace Hypocaust.Tests.Architecture;

/// <summary>The house rule: modules depend one way. Held on the sources' own <c>using</c> lines and qualified names.</summary>
public sealed partial class DependencyTests
{
    private static readonly string[] Below = ["Problems"];

    // module → modules that it may use
    private static readonly Dictionary<string, string[]> Allowed = new()
    {
        ["Problems"] = [],
        ["Data"] = [],
        ["Quantities"] = Below,
        ["Fluids"] = [.. Below, "Data", "Quantities"],
        ["Building"] = [.. Below, "Data", "Quantities"],
        ["Conduction"] = Below,
        ["Floor"] = [.. Below, "Data", "Quantities", "Fluids", "Conduction"],
        ["Hydraulics"] = [.. Below, "Quantities", "Fluids"],
        ["Design"] = [.. Below, "Quantities", "Fluids", "Building", "Floor", "Hydraulics"],
        ["Answers"] = [.. Below, "Quantities", "Design"],
        ["Layout"] = Below,
        ["Plant"] = [.. Below, "Quantities", "Fluids", "Hydraulics", "Design", "Answers"],
        ["Review"] =
        [
            .. Below,
            "Quantities",
            "Fluids",
            "Building",
            "Floor",
            "Hydraulics",
            "Design",
            "Answers",
            "Plant",
        ],
        ["Studies"] =
        [
            .. Below,
            "Quantities",
            "Fluids",
            "Building",
            "Floor",
            "Hydraulics",
            "Design",
            "Answers",
            "Plant",
        ],
        ["Verdicts"] = [.. Below, "Quantities", "Answers"],
        ["Why"] = [.. Below, "Quantities", "Design", "Answers"],
    };

    public static TheoryData<string> Modules => [.. Allowed.Keys];

    [Theory]
    [MemberData(nameof(Modules))]
    public void A_module_uses_only_the_modules_below_it(string module)
    {
        var folder = Path.Combine(Sources(), module);
        Directory.Exists(folder).ShouldBeTrue($"{module} has no folder");
        var wrong = Directory
            .EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories)
            .SelectMany(file =>
                Used()
                    .Matches(File.ReadAllText(file))
                    .Select(match => match.Groups["module"].Value)
                    .Where(used =>
                        used != module
                        && !Allowed[module].Contains(used)
                        && Allowed.ContainsKey(used)
                    )
                    .Select(used => $"{Path.GetFileName(file)} uses {used}")
            )
            .Distinct()
            .ToList();
        wrong.ShouldBeEmpty();
    }

    [Fact]
    public void Every_folder_of_the_library_is_a_module_with_a_readme()
    {
        var folders = Directory
            .EnumerateDirectories(Sources())
            .Select(folder => Path.GetFileName(folder)!)
            .Except(["bin", "obj"])
            .ToList();
        folders.ShouldBe(Allowed.Keys, ignoreOrder: true);
        folders
            .Where(folder => !File.Exists(Path.Combine(Sources(), folder, "README.md")))
            .ShouldBeEmpty();
    }

    [Fact]
    public void The_library_knows_neither_papers_nor_web_nor_command_line() =>
        typeof(Study)
            .Assembly.GetReferencedAssemblies()
            .Select(assembly => assembly.Name!)
            .ShouldAllBe(name =>
                name.StartsWith("System", StringComparison.Ordinal) || name == "netstandard"
            );

    [Fact]
    public void No_source_file_is_longer_than_it_should_be()
    {
        var root = Path.GetFullPath(Path.Combine(Sources(), "..", ".."));
        string[] folders = ["src", "bench"];
        folders
            .SelectMany(folder =>
                Directory.EnumerateFiles(
                    Path.Combine(root, folder),
                    "*.cs",
                    SearchOption.AllDirectories
                )
            )
            .Where(file =>
                !file.Contains(
                    $"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}",
                    StringComparison.Ordinal
                )
            )
            .Where(file => File.ReadLines(file).Count() > 350)
            .Select(file => Path.GetRelativePath(root, file))
            .ShouldBeEmpty();
    }

    private static string Sources()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "Hypocaust.slnx")))
        {
            at = at.Parent;
        }

        return Path.Combine(at!.FullName, "src", "Hypocaust");
    }

    [GeneratedRegex(@"\bHypocaust\.(?<module>[A-Z][A-Za-z]+)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Used();
}
