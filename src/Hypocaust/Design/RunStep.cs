using System.Globalization;
using Hypocaust.Problems;
using Hypocaust.Quantities;

namespace Hypocaust.Design;

/// <summary>One step of a run: a part (<c>heater.out</c>, <c>pump</c>) or a piece of pipe (<c>1.2 m, 2 elbows, 1 tee</c>).</summary>
public sealed record RunStep : IText<RunStep>
{
    private RunStep(string text) => Text = text;

    /// <inheritdoc/>
    public static TextForm Form =>
        new(
            "step of a run",
            "heater.out",
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
            && (char.IsAsciiDigit(trimmed[0]) || trimmed[0] is '-' or '½' or '¼' or '¾')
            ? ReadPipe(text, trimmed)
            : ReadItem(text, trimmed);
    }

    private static Result<RunStep> ReadItem(string text, string trimmed)
    {
        var parts = trimmed.Split('.');
        return parts.Length > 2 || parts.Any(part => !Names.IsName(part))
            ? DesignProblems.NotAStep(text)
            : new RunStep(text) { Item = parts[0], Port = parts.Length > 1 ? parts[1] : null };
    }

    private static Result<RunStep> ReadPipe(string text, string trimmed)
    {
        var pieces = trimmed.Split(',', StringSplitOptions.TrimEntries);
        var length = Quantity<LengthKind>.Read(pieces[0]);
        if (!length.TryGet(out var metres))
        {
            return Result<RunStep>.Failed(length.Problems);
        }

        if (metres.Si < 0)
        {
            return DesignProblems.NegativePipe(text);
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

    private static bool Count(string piece, out int count, out string fitting)
    {
        var words = piece.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        fitting = words.Length == 2 ? words[1].TrimEnd('s') : "";
        count = 0;
        return words.Length == 2
            && int.TryParse(words[0], NumberStyles.None, CultureInfo.InvariantCulture, out count)
            && count <= 100
            && fitting is "elbow" or "tee";
    }
}
