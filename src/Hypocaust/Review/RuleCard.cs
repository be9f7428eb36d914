using System.Collections.Immutable;
using Hypocaust.Answers;

namespace Hypocaust.Review;

/// <summary>What stands on a rule: its name, its words and its source.</summary>
/// <remarks>Titles and sources end without a full stop; the other texts are whole sentences. A test holds that for all rules.</remarks>
public sealed record RuleCard
{
    /// <summary>Stable name in kebab-case, for example <c>relief-valve-missing</c>.</summary>
    public required string Id { get; init; }

    /// <summary>The rule as a sentence that says what is wrong.</summary>
    public required string Title { get; init; }

    /// <summary>How much it matters unless a finding says otherwise.</summary>
    public required Severity Severity { get; init; }

    /// <summary>Why it matters, in one or two plain sentences.</summary>
    public required string Why { get; init; }

    /// <summary>What the rule compares with what, its limits included, in one or two sentences for the guide.</summary>
    public required string LooksAt { get; init; }

    /// <summary>Standard with clause, or "common practice, no source", or "… (from memory)".</summary>
    public required string Source { get; init; }

    /// <summary>Page on which the finding shows.</summary>
    public required string Page { get; init; }

    /// <summary>What must be there before the rule can be asked.</summary>
    public required Needs Needs { get; init; }

    /// <summary>Rules that, when they find something, explain this one, so that it stays silent beside a finding that is as grave: one missing part raises one finding.</summary>
    public ImmutableArray<Type> CausedBy { get; init; } = [];
}

/// <summary>Pages on which findings show.</summary>
public static class Pages
{
    /// <summary>How much heat the building needs.</summary>
    public const string Space = "space";

    /// <summary>What the floor gives.</summary>
    public const string Floor = "floor";

    /// <summary>What flows where.</summary>
    public const string Plant = "plant";
}
