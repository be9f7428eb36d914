namespace Hypocaust.Conduction;

/// <summary>Why a conduction solve ended.</summary>
public enum ConductionStatus
{
    /// <summary>The heat of every cell balances within the tolerance.</summary>
    Converged,

    /// <summary>The iterations ran out first.</summary>
    IterationLimit,

    /// <summary>The equations are too ill-conditioned for double precision: conductivities or cell sizes too far apart.</summary>
    Breakdown,
}

/// <summary>The sentence of each status.</summary>
public static class ConductionStatusSentences
{
    /// <summary>What the status means, in one plain sentence.</summary>
    public static string Sentence(this ConductionStatus status) =>
        status switch
        {
            ConductionStatus.Converged => "The heat of every cell balances.",
            ConductionStatus.IterationLimit =>
                "The temperatures of the section did not settle in the iterations allowed.",
            ConductionStatus.Breakdown =>
                "The section could not be solved because its conductivities or its layers are too far apart in size.",
            _ => throw new ArgumentOutOfRangeException(nameof(status), status, message: null),
        };
}
