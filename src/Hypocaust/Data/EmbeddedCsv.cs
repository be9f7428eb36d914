namespace Hypocaust.Data;

/// <summary>Tables that are part of the library: comma-separated files with their source in lines starting with <c>#</c>, then a line of column names.</summary>
internal static class EmbeddedCsv
{
    /// <summary>The records of a file, each as its cells in column order.</summary>
    /// <exception cref="InvalidOperationException">The library was built without the file.</exception>
    public static IEnumerable<string[]> Rows(string file)
    {
        using var stream =
            typeof(EmbeddedCsv).Assembly.GetManifestResourceStream(file)
            ?? throw new InvalidOperationException($"The table {file} is not in the library.");
        using var reader = new StreamReader(stream);
        var columnNamesPassed = false;
        while (reader.ReadLine() is { } line)
        {
            if (line.Length == 0 || line[0] == '#')
            {
                continue;
            }

            if (columnNamesPassed)
            {
                yield return line.Split(',');
            }

            columnNamesPassed = true;
        }
    }
}
