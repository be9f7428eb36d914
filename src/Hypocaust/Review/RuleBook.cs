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
        var askable = Rules.Where(rule => (rule.Needs & ~there) == Needs.Design).ToImmutableArray();
        return new ReviewAnswer(
            [
                .. askable
                    .SelectMany(rule => rule.Check(subject))
                    .OrderBy(finding => finding.Severity),
            ],
            askable.Length,
            [.. Rules.Except(askable).Select(rule => rule.Id)]
        );
    }

    private static Needs What(ReviewSubject subject) =>
        (subject.Graph is null ? Needs.Design : Needs.Piping)
        | (subject.Space is null ? Needs.Design : Needs.Space)
        | (subject.Floor is null ? Needs.Design : Needs.Floor)
        | (subject.Plant is null ? Needs.Design : Needs.Plant);
}
