using System.Collections.Immutable;
using Hypocaust.Answers;
using Hypocaust.Review.Rules;

namespace Hypocaust.Review;

/// <summary>All rules and how they are asked.</summary>
public static class RuleBook
{
    /// <summary>The rules; a test holds that none is forgotten.</summary>
    public static ImmutableArray<ReviewRule> Rules { get; } = [new ReliefValveMissing()];

    /// <summary>Asks every rule that can be asked; findings come with the gravest first.</summary>
    public static ReviewAnswer Review(ReviewSubject subject)
    {
        var there = What(subject);
        var askable = Rules.Where(rule => (rule.Needs & ~there) == 0).ToImmutableArray();
        return new ReviewAnswer(
            [.. askable.SelectMany(rule => rule.Check(subject)).OrderBy(finding => finding.Severity)],
            askable.Length,
            [.. Rules.Except(askable).Select(rule => rule.Id)]
        );
    }

    private static Needs What(ReviewSubject subject) =>
        (subject.Graph is null ? 0 : Needs.Piping)
        | (subject.Space is null ? 0 : Needs.Space)
        | (subject.Floor is null ? 0 : Needs.Floor)
        | (subject.Plant is null ? 0 : Needs.Plant);
}
