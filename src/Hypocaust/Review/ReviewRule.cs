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
    PlantAnswer = 8,

    /// <summary>The answer of Plant, and with it the piping.</summary>
    Plant = PlantAnswer | Piping,
}

/// <summary>One rule: something that an experienced fitter, inspector or heating engineer would say on seeing a design.</summary>
/// <param name="card">Its name, words and source.</param>
public abstract class ReviewRule(RuleCard card)
{
    /// <summary>Name, words and source.</summary>
    public RuleCard Card => card;

    /// <summary>Stable name in kebab-case.</summary>
    public string Id => card.Id;

    /// <summary>What this rule finds; nothing where all is well.</summary>
    /// <param name="subject">A subject that holds what the rule needs.</param>
    public abstract IEnumerable<Finding> Check(ReviewSubject subject);

    /// <summary>Makes a finding of this rule.</summary>
    /// <param name="place">Path of the value in the design.</param>
    /// <param name="what">What is wrong, with the numbers of this design.</param>
    /// <param name="remedy">What would mend it.</param>
    /// <param name="severity">How much it matters, if not as usual.</param>
    protected Finding Find(string place, string what, string remedy, Severity? severity = null) =>
        new(
            card.Id,
            card.Title,
            severity ?? card.Severity,
            place,
            what,
            card.Why,
            remedy,
            card.Source,
            card.Page
        );
}
