using System.Collections.Immutable;
using Hypocaust.Answers;

namespace Hypocaust.Web.Shell;

/// <summary>How a severity is marked: a shape and a word, so that nobody needs to tell colours apart.</summary>
internal static class SeverityMark
{
    /// <summary>All severities, the gravest first.</summary>
    public static ImmutableArray<Severity> All { get; } =
    [Severity.Danger, Severity.WillNotWork, Severity.Poor, Severity.Note];

    /// <summary>Its shape.</summary>
    public static string Shape(Severity severity) =>
        severity switch
        {
            Severity.Danger => "▲",
            Severity.WillNotWork => "■",
            Severity.Poor => "●",
            _ => "○",
        };

    /// <summary>Its word for one finding or a count of them.</summary>
    public static string Word(Severity severity) =>
        severity switch
        {
            Severity.Danger => "danger",
            Severity.WillNotWork => "will not work",
            Severity.Poor => "poor",
            _ => "note",
        };

    /// <summary>What a severity means, as a head over its findings.</summary>
    public static string Head(Severity severity) =>
        severity switch
        {
            Severity.Danger => "Someone can be hurt or something destroyed",
            Severity.WillNotWork => "It will not work",
            Severity.Poor => "It works badly or not for long",
            _ => "Worth knowing",
        };
}
