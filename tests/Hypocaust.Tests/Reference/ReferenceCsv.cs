using System.Globalization;

namespace Hypocaust.Tests.Reference;

/// <summary>Reads the outside check values in <c>Reference/Data</c>; each file names its source in its head.</summary>
internal static class ReferenceCsv
{
    /// <summary>One row of a table, by column name.</summary>
    public sealed record Row(IReadOnlyDictionary<string, string> Cells)
    {
        public string this[string column] => Cells[column];

        public double Number(string column) =>
            double.Parse(Cells[column], CultureInfo.InvariantCulture);

        public double? NumberOrNull(string column) =>
            Cells[column].Length == 0 ? null : Number(column);
    }

    /// <summary>A worked case: inputs and expected values by name.</summary>
    public sealed record Case(
        string Name,
        IReadOnlyDictionary<string, string> Inputs,
        IReadOnlyDictionary<string, Expected> Expected
    )
    {
        public double Input(string name) =>
            double.Parse(Inputs[name], CultureInfo.InvariantCulture);
    }

    /// <summary>An expected value with the tolerance that its source allows (relative unless a unit is given).</summary>
    public sealed record Expected(string Text, string Unit, string Tolerance)
    {
        public double Number => double.Parse(Text, CultureInfo.InvariantCulture);

        /// <summary>The tolerance as an absolute figure in the unit of the value.</summary>
        public double Absolute =>
            Tolerance.Split(' ') is [var figure, ..]
            && Tolerance.Contains(' ', StringComparison.Ordinal)
                ? double.Parse(figure, CultureInfo.InvariantCulture)
                : double.Parse(Tolerance, CultureInfo.InvariantCulture) * Math.Abs(Number);
    }

    public static IReadOnlyList<Row> Table(string file)
    {
        var lines = Lines(file);
        var header = Split(lines[0]);
        return
        [
            .. lines
                .Skip(1)
                .Select(line => new Row(
                    header.Zip(Split(line)).ToDictionary(pair => pair.First, pair => pair.Second)
                )),
        ];
    }

    public static IReadOnlyList<Case> Cases(string file) =>
        [
            .. Table(file)
                .GroupBy(row => row["case"])
                .Select(group => new Case(
                    group.Key,
                    group
                        .Where(row => row["role"] == "input")
                        .ToDictionary(row => row["name"], row => row["value"]),
                    group
                        .Where(row => row["role"] == "expected")
                        .ToDictionary(
                            row => row["name"],
                            row => new Expected(row["value"], row["unit"], row["tolerance"])
                        )
                )),
        ];

    private static string[] Lines(string file) =>
        [
            .. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Reference", "Data", file))
                .Where(line => line.Length > 0 && line[0] != '#'),
        ];

    private static string[] Split(string line)
    {
        var cells = new List<string>();
        var quoted = false;
        var start = 0;
        for (var i = 0; i <= line.Length; i++)
        {
            if (i == line.Length || (line[i] == ',' && !quoted))
            {
                cells.Add(line[start..i].Trim('"'));
                start = i + 1;
            }
            else if (line[i] == '"')
            {
                quoted = !quoted;
            }
        }

        return [.. cells];
    }
}
