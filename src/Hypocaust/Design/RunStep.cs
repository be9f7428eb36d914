using System.Globalization;
using Hypocaust.Problems;
using Hypocaust.Quantities;

namespace Hypocaust.Design;

/// <summary>One step of a run: a part (<c>heater.out</c>, <c>pump</c>) or a piece of pipe (<c>1.2 m, 2 elbows, 1 tee</c>).</summary>
public sealed record RunStep : IText<RunStep>
{
    private const double LongestPipeM = 500;

    private RunStep(string text) => Text = text;

    /// <inheritdoc/>
    public static TextForm Form =>
        new(
            "step of a run",
            "1.2 m, 2 elbows",
            "A part (\"heater.out\", \"pump\") or a piece of pipe (\"1.2 m, 2 elbows\")."
        );

    /// <inheritdoc/>
    public string Text { get; }

    /// <summary>Name of the part, or null for a piece of pipe.</summary>
    public string? Item { get; private init; }

    /// <summary>Port of the part, or null where the part has one way in and one way out.</summary>
    public string? Port { get; private init; }

    /// <summary>Length of the piece of pipe; zero for a part.</summary>
    public Length Length { get; private init; }

    /// <summary>90° elbows in the piece of pipe.</summary>
    public int Elbows { get; private init; }

    /// <summary>Tees passed straight in the piece of pipe.</summary>
    public int Tees { get; private init; }

    /// <summary>Whether it is a piece of pipe.</summary>
    public bool IsPipe => Item is null;

    /// <inheritdoc/>
    public static Result<RunStep> Read(string text)
    {
        var trimmed = text.Trim();
        return
            trimmed.Length > 0
            && (
                char.IsAsciiDigit(trimmed[0])
                || trimmed[0] is '-' or '−' or '.' or '½' or '¼' or '¾'
            )
            ? ReadPipe(text, trimmed)
            : ReadItem(text, trimmed);
    }

    private static Result<RunStep> ReadItem(string text, string trimmed)
    {
        var point = 0;
        while (
            point < trimmed.Length
            && (trimmed[point] != '.' || Names.IsDecimalPoint(trimmed, point))
        )
        {
            point++;
        }

        var item = trimmed[..point].TrimEnd();
        var port = point < trimmed.Length ? trimmed[(point + 1)..].TrimStart() : null;
        return !Names.IsName(item) || (port is not null && !Names.IsName(port))
            ? DesignProblems.NotAStep(text)
            : new RunStep(text) { Item = item, Port = port };
    }

    private static Result<RunStep> ReadPipe(string text, string trimmed)
    {
        var pieces = trimmed.Split(',', StringSplitOptions.TrimEntries);
        // "1,2 m" would else read as one metre without a unit and a strange fitting
        if (pieces.Length > 1 && pieces[1].Length > 0 && IsBareNumber(pieces[0]))
        {
            return QuantityProblems.CommaInNumber(text, LengthKind.Kind);
        }

        var length = Quantity<LengthKind>.Read(pieces[0]);
        if (!length.TryGet(out var metres))
        {
            return Result<RunStep>.Failed(length.Problems);
        }

        if (metres.Si is < 0 or > LongestPipeM)
        {
            return DesignProblems.PipeOutOfBounds(text, LongestPipeM);
        }

        var step = new RunStep(text) { Length = metres };
        foreach (var piece in pieces.Skip(1))
        {
            if (!Count(piece, out var count, out var fitting))
            {
                return DesignProblems.NotAStep(text);
            }

            step =
                fitting == "elbow"
                    ? step with
                    {
                        Elbows = step.Elbows + count,
                    }
                    : step with
                    {
                        Tees = step.Tees + count,
                    };
        }

        return step;
    }

    private static bool IsBareNumber(string text) => NumberScan.IsWhole(text, out _);

    private static bool Count(string piece, out int count, out string fitting)
    {
        var words = piece.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        fitting = words.Length == 2 ? words[1].ToLowerInvariant().TrimEnd('s') : "";
        count = 0;
        return words.Length == 2
            && int.TryParse(words[0], NumberStyles.None, CultureInfo.InvariantCulture, out count)
            && count <= 100
            && fitting is "elbow" or "tee";
    }
}
