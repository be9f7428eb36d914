using System.Collections.Immutable;
using Hypocaust.Answers;
using Hypocaust.Review.Rules.Expansion;
using Hypocaust.Review.Rules.LowPressure;
using Hypocaust.Review.Rules.Piping;
using Hypocaust.Review.Rules.Relief;

namespace Hypocaust.Review;

/// <summary>All rules and how they are asked.</summary>
public static class RuleBook
{
    /// <summary>The rules; a test holds that none is forgotten.</summary>
    public static ImmutableArray<ReviewRule> Rules { get; } =
    [
        new ReliefValveMissing(),
        new ReliefValveAboveWeakestPart(),
        new ReliefValveTooSmall(),
        new ReliefValveCapacityNotStated(),
        new ReliefValveCanBeCutOff(),
        new ExpansionVesselMissing(),
        new ExpansionVesselTooSmall(),
        new ExpansionVesselCutOff(),
        new ExpansionVesselCanBeCutOff(),
        new PrechargeNotStated(),
        new PrechargeTooHigh(),
        new PrechargeTooLow(),
        new ColdFillTooLow(),
        new WarmPressureNearRelief(),
        new CirculatorPumpsTowardsVessel(),
        new PressureBelowAtmosphere(),
        new CirculatorInletBoils(),
        new PartNotPiped(),
    ];

    /// <summary>Asks every rule that can be asked; findings come with the gravest first, and without those that follow from another.</summary>
    public static ReviewAnswer Review(ReviewSubject subject)
    {
        var there = What(subject);
        var askable = Rules
            .Where(rule => (rule.Card.Needs & ~there) == Needs.Design)
            .ToImmutableArray();
        var found = askable
            .Select(rule => (Rule: rule, Findings: rule.Check(subject).ToImmutableArray()))
            .Where(pair => !pair.Findings.IsEmpty)
            .ToImmutableArray();
        var finders = found.Select(pair => pair.Rule.GetType()).ToImmutableHashSet();
        return new ReviewAnswer(
            [
                .. found
                    .Where(pair => !pair.Rule.Card.CausedBy.Any(finders.Contains))
                    .SelectMany(pair => pair.Findings)
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
        | (subject.Plant is null ? Needs.Design : Needs.PlantAnswer);
}
