using Hypocaust.Answers;
using Hypocaust.Design;

namespace Hypocaust.Tests;

/// <summary>The example designs of the repository, and the one with which <c>hypocaust new</c> starts.</summary>
internal static class Examples
{
    public static IReadOnlyList<string> Names { get; } =
    ["pottery-studio", "ridge-cabin", "damp-workshop", "new"];

    public static DesignDocument Document(string name) =>
        DesignFile
            .Read(
                name == "new"
                    ? DesignFile.New("New")
                    : File.ReadAllText(
                        Path.Combine(
                            AppContext.BaseDirectory,
                            "examples",
                            name + DesignFile.Extension
                        )
                    )
            )
            .Value;

    public static Answer Answer(string name) => Study.Solve(Document(name).Design);
}
