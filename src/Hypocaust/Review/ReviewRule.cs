using Hypocaust.Answers;

namespace Hypocaust.Review;

/// <summary>What a rule needs before it can be asked.</summary>
[Flags]
public enum Needs
{
    /// <summary>Only the design.</summary>
    Design = 0,

    /// <summary>The piping of a plant.</summary>
    Piping = 1,

    /// <summary>The answer of Space.</summary>
    Space = 2,

    /// <summary>The answer of Floor.</summary>
    Floor = 4,

    /// <summary>The answer of Plant.</summary>
    Plant = 8,
}

/// <summary>One rule: something that an experienced fitter, inspector or heating engineer would say on seeing a design.</summary>
public abstract class ReviewRule
{
    /// <summary>Stable name in kebab-case, for example <c>relief-valve-missing</c>.</summary>
    public abstract string Id { get; }

    /// <summary>The rule as a sentence that says what is wrong.</summary>
    public abstract string Title { get; }

    /// <summary>How much it matters unless a finding says otherwise.</summary>
    public abstract Severity Severity { get; }

    /// <summary>Why it matters, in one or two plain sentences.</summary>
    public abstract string Why { get; }

    /// <summary>Standard with clause, or "common practice, no source", or "… (from memory)".</summary>
    public abstract string Source { get; }

    /// <summary>Page on which the finding shows: space, floor or plant.</summary>
    public abstract string Page { get; }

    /// <summary>What must be there before the rule can be asked.</summary>
    public abstract Needs Needs { get; }

    /// <summary>What this rule finds; nothing where all is well.</summary>
    /// <param name="subject">A subject that holds what the rule needs.</param>
    public abstract IEnumerable<Finding> Check(ReviewSubject subject);

    /// <summary>Makes a finding of this rule.</summary>
    /// <param name="place">Path of the value in the design.</param>
    /// <param name="what">What is wrong, with the numbers of this design.</param>
    /// <param name="remedy">What would mend it.</param>
    /// <param name="severity">How much it matters, if not as usual.</param>
    protected Finding Find(string place, string what, string remedy, Severity? severity = null) =>
        new(Id, Title, severity ?? Severity, place, what, Why, remedy, Source, Page);
}
