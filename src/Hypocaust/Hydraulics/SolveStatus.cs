namespace Hypocaust.Hydraulics;

/// <summary>Why a solve ended.</summary>
public enum SolveStatus
{
    /// <summary>All equations hold within the tolerances.</summary>
    Converged,

    /// <summary>The iterations ran out before the equations held.</summary>
    IterationLimit,

    /// <summary>The flow equations became singular in double precision: resistances too far apart.</summary>
    Breakdown,

    /// <summary>No arrangement of open and closed check valves was found that fits the pressures.</summary>
    CheckValvesUndecided,
}

/// <summary>The sentence of each status.</summary>
public static class SolveStatusSentences
{
    /// <summary>What the status means, in one plain sentence.</summary>
    public static string Sentence(this SolveStatus status) =>
        status switch
        {
            SolveStatus.Converged => "Flows and pressures fit together.",
            SolveStatus.IterationLimit =>
                "The flows did not settle; look first at the branch and node named as worst.",
            SolveStatus.Breakdown =>
                "The equations could not be solved because some resistances are too far apart; look for a pipe that is extremely short, long or narrow.",
            SolveStatus.CheckValvesUndecided =>
                "No combination of open and closed check valves fits the pressures; look at check valves that face each other.",
            _ => throw new ArgumentOutOfRangeException(nameof(status), status, message: null),
        };
}
