using System.Collections.Immutable;
using Hypocaust.Answers;
using Hypocaust.Review.Rules.Air;
using Hypocaust.Review.Rules.Antifreeze;
using Hypocaust.Review.Rules.Circulation;
using Hypocaust.Review.Rules.Expansion;
using Hypocaust.Review.Rules.HeatedFloor;
using Hypocaust.Review.Rules.Heating;
using Hypocaust.Review.Rules.LowPressure;
using Hypocaust.Review.Rules.Piping;
using Hypocaust.Review.Rules.Relief;
using Hypocaust.Review.Rules.Service;

namespace Hypocaust.Review;

/// <summary>All rules and how they are asked.</summary>
public static class RuleBook
{
    /// <summary>The rules; a test holds that none is forgotten.</summary>
    public static ImmutableArray<ReviewRule> Rules { get; } =
    [
        new ReliefValveAboveWeakestPart(),
        new ReliefValveCanBeCutOff(),
        new ReliefValveCapacityNotStated(),
        new ReliefValveMissing(),
        new ReliefValveTooSmall(),
        new CirculatorPumpsTowardsVessel(),
        new ColdFillTooLow(),
        new ExpansionVesselCanBeCutOff(),
        new ExpansionVesselCutOff(),
        new ExpansionVesselMissing(),
        new ExpansionVesselTooSmall(),
        new PrechargeNotStated(),
        new PrechargeTooHigh(),
        new PrechargeTooLow(),
        new WarmPressureNearRelief(),
        new CirculatorInletBoils(),
        new PressureBelowAtmosphere(),
        new CheckValveHoldsBack(),
        new CirculatorMissing(),
        new CirculatorMovesNothing(),
        new CirculatorOutsideCurve(),
        new CirculatorPipedBackwards(),
        new CirculatorTooStrong(),
        new CloselySpacedTeesPipedBackwards(),
        new CloselySpacedTeesTooFarApart(),
        new HeaterFlowBelowMinimum(),
        new HeaterFlowNearMinimum(),
        new HeaterPipedBackwards(),
        new LoopCoolsTooFar(),
        new LoopShut(),
        new LoopStarved(),
        new LoopTooLong(),
        new LoopsRunBackwards(),
        new ParallelCirculatorsWithoutCheckValve(),
        new PartPipedBackwards(),
        new PartThrottles(),
        new PipeThrottles(),
        new SecondaryCircuitWithoutCheckValve(),
        new SecondaryFlowAbovePrimary(),
        new ShutValveStopsFlow(),
        new WaterPassesStoppedCirculator(),
        new WaterTooFast(),
        new HeaterMissing(),
        new HeaterTooSmall(),
        new SetPointAboveHeaterMaximum(),
        new SetPointAboveTubeRating(),
        new SetPointNotReached(),
        new SwitchedOff(),
        new WaterTooWarmForScreed(),
        new CoveringTooThick(),
        new FloorGivesTooLittle(),
        new FloorSurfaceTooWarm(),
        new InsulationBelowTooThin(),
        new TubeCoverTooThin(),
        new TubeSpacingTooWide(),
        new ZoneNotHeated(),
        new AirRemovalMissing(),
        new AirSeparatorMissing(),
        new AirSeparatorNotAtBestPlace(),
        new HighPointWithoutVent(),
        new ColdestPlaceNotStated(),
        new EthyleneGlycolIsPoisonous(),
        new FluidFreezes(),
        new GlycolTooStrong(),
        new GlycolTooWeak(),
        new CircuitWithoutHeater(),
        new TubeLetsOxygenIn(),
        new CannotBePurged(),
        new CirculatorCannotBeIsolated(),
        new DrainValveMissing(),
        new DrainValveTooHigh(),
        new FillValveMissing(),
        new PressureGaugeMissing(),
        new StrainerCannotBeIsolated(),
        new StrainerMissing(),
        new ThermometersMissing(),
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
        var gravest = found.ToImmutableDictionary(
            pair => pair.Rule.GetType(),
            pair => pair.Findings.Min(finding => finding.Severity)
        );

        // a finding is left out only beside a cause that is as grave, so that nothing dangerous is hushed up
        bool IsExplained(ReviewRule rule, Finding finding) =>
            rule.Card.CausedBy.Any(cause =>
                gravest.TryGetValue(cause, out var severity) && severity <= finding.Severity
            );

        return new ReviewAnswer(
            [
                .. found
                    .SelectMany(pair =>
                        pair.Findings.Where(finding => !IsExplained(pair.Rule, finding))
                    )
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
