using System.Collections.Immutable;
using Hypocaust.Design;

namespace Hypocaust.Answers;

/// <summary>How much a finding matters.</summary>
public enum Severity
{
    /// <summary>Someone can be hurt or something destroyed.</summary>
    Danger,

    /// <summary>It will not work.</summary>
    WillNotWork,

    /// <summary>It works badly or not for long.</summary>
    Poor,

    /// <summary>Worth knowing.</summary>
    Note,
}

/// <summary>Everything that is unsafe, unsuitable or missing.</summary>
[Meaning("Everything that is unsafe, unsuitable or missing.")]
public sealed record ReviewAnswer(
    [property: Meaning("Findings, the gravest first.")] ImmutableArray<Finding> Findings,
    [property: Meaning("Number of rules that were asked.")] int RulesAsked,
    [property: Meaning(
        "Rules that could not be asked because the part of the answer they look at is missing."
    )]
        ImmutableArray<string> NotAsked
);

/// <summary>One finding of the review.</summary>
[Meaning("One finding of the review.")]
public sealed record Finding(
    [property: Meaning("Stable name of the rule, for example \"relief-valve-missing\".")]
        string Rule,
    [property: Meaning("The rule as a sentence.")] string Title,
    [property: Meaning("How much it matters.")] Severity Severity,
    [property: Meaning("Path of the value in the design that it concerns.")] string Place,
    [property: Meaning("What is wrong, with the numbers of this design.")] string What,
    [property: Meaning("Why it matters.")] string Why,
    [property: Meaning("What would mend it.")] string Remedy,
    [property: Meaning("Where the rule comes from.")] string Source,
    [property: Meaning("Page on which it shows: space, floor, plant.")] string Page
);
