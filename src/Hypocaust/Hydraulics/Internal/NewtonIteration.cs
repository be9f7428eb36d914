using System.Runtime.Intrinsics;

namespace Hypocaust.Hydraulics.Internal;

/// <summary>Newton's steps for one arrangement of open and closed branches.</summary>
internal sealed class NewtonIteration(
    NewtonStep step,
    NodalEquations nodes,
    NetworkSolverOptions options
)
{
    private const double LeastHeadScalePa = 1;
    private const double LeastFlowScaleKgPerS = 1e-6;
    private const double OvershootAllowed = 0.5;
    private const int DampingTrials = 30;

    private readonly int width =
        !options.Vectorised ? 1
        : Vector512.IsHardwareAccelerated ? 8
        : Vector256.IsHardwareAccelerated ? 4
        : 1;

    private StepMeasures measures;

    /// <summary>Steps taken since <see cref="Restart"/>.</summary>
    public int Iterations { get; private set; }

    /// <summary>What head residuals are compared with, Pa.</summary>
    public double HeadScalePa => Math.Max(LeastHeadScalePa, measures.LargestDifference);

    /// <summary>What mass residuals are compared with, kg/s.</summary>
    public double FlowScaleKgPerS => Math.Max(LeastFlowScaleKgPerS, measures.LargestFlow);

    /// <summary>Largest head residual over <see cref="HeadScalePa"/>.</summary>
    public double HeadResidual => measures.LargestResidual / HeadScalePa;

    /// <summary>Counts steps from zero again.</summary>
    public void Restart() => Iterations = 0;

    /// <summary>Steps from the flows and potentials reached so far until the equations hold.</summary>
    /// <param name="anchors">A slot in each part without given pressure.</param>
    public SolveStatus Run(ReadOnlySpan<int> anchors)
    {
        nodes.Differences(step.Difference);
        Array.Clear(step.Step);
        Evaluate();
        for (var first = true; Iterations < options.IterationLimit; first = false)
        {
            Iterations++;
            if (!nodes.Solve(step, anchors))
            {
                return SolveStatus.Breakdown;
            }

            Advance();
            if (HeadsHold() && MassHolds())
            {
                return SolveStatus.Converged;
            }

            // the first step only makes mass balance; from then on each step lowers the content, a convex function of the flows
            if (!first && !HeadsHold())
            {
                Damp();
            }
        }

        return SolveStatus.IterationLimit;
    }

    // the largest of numbers may pass over a NaN; a sum cannot
    private bool HeadsHold() =>
        double.IsFinite(measures.SlopeAtEnd)
        && measures.LargestResidual <= options.Tolerance * HeadScalePa;

    private bool MassHolds() =>
        nodes.LargestImbalance(step.Flow, out _) <= options.Tolerance * FlowScaleKgPerS;

    /// <summary>Shortens a step that overshot the lowest content along it, by the slopes at its ends (regula falsi, halved where it sticks).</summary>
    private void Damp()
    {
        var start = measures.SlopeAtStart;
        if (measures.SlopeAtEnd <= -OvershootAllowed * start)
        {
            return;
        }

        var (low, slopeLow, high, slopeHigh, at) = (0.0, start, 1.0, measures.SlopeAtEnd, 1.0);
        for (
            var trial = 0;
            trial < DampingTrials && Math.Abs(measures.SlopeAtEnd) > -OvershootAllowed * start;
            trial++
        )
        {
            var falsi = low + ((high - low) * -slopeLow / (slopeHigh - slopeLow));
            var next = trial % 2 == 0 ? falsi : 0.5 * (low + high);
            Shift(next - at);
            at = next;
            if (measures.SlopeAtEnd > 0)
            {
                (high, slopeHigh) = (at, measures.SlopeAtEnd);
            }
            else
            {
                (low, slopeLow) = (at, measures.SlopeAtEnd);
            }
        }

        measures.SlopeAtStart = start;
    }

    private void Evaluate()
    {
        switch (width)
        {
            case 8:
                step.Evaluate<Lane8>(out measures);
                break;
            case 4:
                step.Evaluate<Lane4>(out measures);
                break;
            default:
                step.Evaluate<Lane1>(out measures);
                break;
        }
    }

    private void Advance()
    {
        switch (width)
        {
            case 8:
                step.Advance<Lane8>(out measures);
                break;
            case 4:
                step.Advance<Lane4>(out measures);
                break;
            default:
                step.Advance<Lane1>(out measures);
                break;
        }
    }

    private void Shift(double part)
    {
        switch (width)
        {
            case 8:
                step.Shift<Lane8>(part, out measures);
                break;
            case 4:
                step.Shift<Lane4>(part, out measures);
                break;
            default:
                step.Shift<Lane1>(part, out measures);
                break;
        }
    }
}
