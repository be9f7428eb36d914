namespace Hypocaust.Cli.Terminal;

/// <summary>What the command tells the shell.</summary>
internal static class ExitCode
{
    /// <summary>All is well.</summary>
    public const int Clean = 0;

    /// <summary>The review has findings above a note, or part of the answer is missing.</summary>
    public const int Findings = 1;

    /// <summary>The file cannot be read or written.</summary>
    public const int CannotRead = 2;

    /// <summary>The command line itself is wrong.</summary>
    public const int Usage = 64;
}
