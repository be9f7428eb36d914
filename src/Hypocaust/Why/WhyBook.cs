using System.Collections.Immutable;
using Hypocaust.Answers;

namespace Hypocaust.Why;

/// <summary>Explains every number of an answer.</summary>
public static class WhyBook
{
    private static readonly ImmutableArray<(
        string Prefix,
        Func<Answer, string, ImmutableArray<int>, Derivation?> Find
    )> Chapters =
    [
        ("space.", SpaceWhy.Find),
        ("floor.loops[*].", LoopWhy.Find),
        ("floor.", FloorWhy.Find),
        ("plant.fill.", FillWhy.Find),
        ("plant.items[*].", PipingWhy.Find),
        ("plant.pipes[*].", PipingWhy.Find),
        ("plant.", PlantWhy.Find),
    ];

    /// <summary>Why a number is what it is; null where the answer has no such number.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="path">Path of the number, for example <c>floor.loops[0].running.heatUpW</c>.</param>
    public static Explanation? Explain(Answer answer, string path)
    {
        if (
            AnswerPath.Read(answer, path) is not { } value
            || Derive(answer, path) is not { } derivation
        )
        {
            return null;
        }

        return new Explanation(
            path,
            derivation.Title,
            value,
            derivation.Shown,
            derivation.Formula,
            derivation.Inputs,
            derivation.Source,
            derivation.Remark
        );
    }

    internal static Derivation? Derive(Answer answer, string path)
    {
        var (pattern, indices) = AnswerPath.Split(path);
        foreach (var (prefix, find) in Chapters)
        {
            if (pattern.StartsWith(prefix, StringComparison.Ordinal))
            {
                return find(answer, pattern[prefix.Length..], indices);
            }
        }

        return null;
    }
}
