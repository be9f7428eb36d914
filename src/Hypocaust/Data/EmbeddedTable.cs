using System.Collections.Immutable;
using System.Globalization;

namespace Hypocaust.Data;

/// <summary>A CSV file inside the library: its rows, and the source and status that its head states.</summary>
internal sealed class EmbeddedTable
{
    private EmbeddedTable(string source, string status, ImmutableArray<ImmutableArray<string>> rows)
    {
        Source = source;
        Status = status;
        Rows = rows;
    }

    public string Source { get; }

    public string Status { get; }

    public ImmutableArray<ImmutableArray<string>> Rows { get; }

    /// <summary>Reads a data file of the library.</summary>
    /// <param name="file">Module and file name, for example <c>Floor/en1264_factors.csv</c>.</param>
    /// <exception cref="InvalidDataException">The file is missing or its head states no source or status.</exception>
    public static EmbeddedTable Load(string file)
    {
        using var stream =
            typeof(EmbeddedTable).Assembly.GetManifestResourceStream(file)
            ?? throw new InvalidDataException($"{file} is not in the library.");
        using var reader = new StreamReader(stream);
        var lines = reader
            .ReadToEnd()
            .Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        return new EmbeddedTable(
            Head(lines, "# source: ", file),
            Head(lines, "# status: ", file),
            [
                .. lines
                    .Where(line => line[0] != '#')
                    .Skip(1)
                    .Select(line => line.Split(',').ToImmutableArray()),
            ]
        );
    }

    public static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);

    private static string Head(string[] lines, string key, string file) =>
        Array.Find(lines, line => line.StartsWith(key, StringComparison.Ordinal))?[key.Length..]
        ?? throw new InvalidDataException($"The head of {file} does not say \"{key.Trim()}\".");
}
