using Hypocaust.Answers;

namespace Hypocaust.Cli.Terminal;

/// <summary>A shape and a word for each severity, so that nothing hangs on colour.</summary>
internal static class SeverityWords
{
    public static string Mark(Severity severity) =>
        severity switch
        {
            Severity.Danger => "▲ Danger:",
            Severity.WillNotWork => "■ Will not work:",
            Severity.Poor => "● Poor:",
            _ => "○ Note:",
        };
}
