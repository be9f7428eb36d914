using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Hypocaust.Hydraulics.Friction;

namespace Hypocaust.Hydraulics.Internal;

/// <summary>Sums and largest values gathered while all branches are stepped.</summary>
internal struct StepMeasures
{
    /// <summary>Slope of the content (Σ ∫ loss dm) along the step at its end, Σ d·(loss − difference), Pa·kg/s; where it is zero the step is best.</summary>
    public double SlopeAtEnd;

    /// <summary>The same at the start of the step; never positive.</summary>
    public double SlopeAtStart;

    public double LargestResidual;
    public double LargestDifference;
    public double LargestFlow;
}

/// <summary>The unknowns of all branches in solver order, and the step that moves them.</summary>
internal sealed class NewtonStep(BranchOrder order, BranchLaws laws)
{
    /// <summary>Mass flow, kg/s.</summary>
    public double[] Flow { get; } = new double[order.PaddedCount];

    /// <summary>Last Newton step of the flow, kg/s.</summary>
    public double[] Step { get; } = new double[order.PaddedCount];

    /// <summary>Conductance: inverse slope of the law, kg/(s·Pa); 0 where closed.</summary>
    public double[] Conductance { get; } = new double[order.PaddedCount];

    /// <summary>Difference of potential from → to, Pa.</summary>
    public double[] Difference { get; } = new double[order.PaddedCount];

    /// <summary>Difference − loss, Pa; 0 where closed.</summary>
    public double[] Residual { get; } = new double[order.PaddedCount];

    /// <summary>1 where flow is possible, 0 where closed or padding.</summary>
    public double[] Open { get; } = new double[order.PaddedCount];

    /// <summary>Change of difference found by the nodal equations, Pa.</summary>
    public double[] DifferenceChange { get; } = new double[order.PaddedCount];

    /// <summary>Takes the whole Newton step: d = g (r + δ), then evaluates the laws at the new flows.</summary>
    public void Advance<T>(out StepMeasures measures)
        where T : struct, ILane<T>
    {
        ref var flow = ref MemoryMarshal.GetArrayDataReference(Flow);
        ref var step = ref MemoryMarshal.GetArrayDataReference(Step);
        ref var conductance = ref MemoryMarshal.GetArrayDataReference(Conductance);
        ref var difference = ref MemoryMarshal.GetArrayDataReference(Difference);
        ref var residual = ref MemoryMarshal.GetArrayDataReference(Residual);
        ref var change = ref MemoryMarshal.GetArrayDataReference(DifferenceChange);
        var atStart = T.Of(0);
        for (var l = 0; l < order.PaddedCount; l += T.Width)
        {
            var delta = T.Load(ref change, l);
            var drive = T.Load(ref residual, l) + delta;
            var d = T.Load(ref conductance, l) * drive;
            atStart -= d * drive;
            d.Store(ref step, l);
            (T.Load(ref flow, l) + d).Store(ref flow, l);
            (T.Load(ref difference, l) + delta).Store(ref difference, l);
        }

        Evaluate<T>(out measures);
        measures.SlopeAtStart = T.Sum(atStart);
    }

    /// <summary>Moves the flows along the last step by a part of it, then evaluates.</summary>
    public void Shift<T>(double part, out StepMeasures measures)
        where T : struct, ILane<T>
    {
        for (var l = 0; l < order.Count; l++)
        {
            Flow[l] += part * Step[l];
        }

        Evaluate<T>(out measures);
    }

    /// <summary>Evaluates losses, conductances and residuals at the present flows and differences.</summary>
    public void Evaluate<T>(out StepMeasures measures)
        where T : struct, ILane<T>
    {
        ref var flow = ref MemoryMarshal.GetArrayDataReference(Flow);
        ref var difference = ref MemoryMarshal.GetArrayDataReference(Difference);
        ref var open = ref MemoryMarshal.GetArrayDataReference(Open);
        var slopeAtEnd = T.Of(0);
        var largestResidual = T.Of(0);
        var largestDifference = T.Of(0);
        var largestFlow = T.Of(0);
        for (var l = 0; l < order.PaddedCount; l += T.Width)
        {
            var m = T.Load(ref flow, l);
            Law(l, m, out var loss, out var slope);
            var isOpen = T.Load(ref open, l);
            var dp = T.Load(ref difference, l) * isOpen;
            var r = (dp - loss) * isOpen;
            (isOpen / slope).Store(ref MemoryMarshal.GetArrayDataReference(Conductance), l);
            r.Store(ref MemoryMarshal.GetArrayDataReference(Residual), l);
            slopeAtEnd -= T.Load(ref MemoryMarshal.GetArrayDataReference(Step), l) * r;
            largestResidual = T.Max(largestResidual, T.Abs(r));
            largestDifference = T.Max(largestDifference, T.Abs(dp));
            largestFlow = T.Max(largestFlow, T.Abs(m));
        }

        measures = new StepMeasures
        {
            SlopeAtEnd = T.Sum(slopeAtEnd),
            LargestResidual = T.Largest(largestResidual),
            LargestDifference = T.Largest(largestDifference),
            LargestFlow = T.Largest(largestFlow),
        };
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Law<T>(int l, T m, out T loss, out T slope)
        where T : struct, ILane<T>
    {
        var q = T.WhereNegative(m, At<T>(laws.Backward, l), At<T>(laws.Forward, l));
        var linear = T.WhereNegative(
            m,
            At<T>(laws.LinearBackward, l),
            At<T>(laws.LinearForward, l)
        );
        var m2 = m * m;
        var root = T.Sqrt(m2 + T.Of(BranchLaws.SmallestFlowKgPerS * BranchLaws.SmallestFlowKgPerS));
        loss = T.MultiplyAdd(T.MultiplyAdd(q, root, linear), m, At<T>(laws.Constant, l));
        slope = T.MultiplyAdd(q, root + (m2 / root), linear);
        if (l < order.CrackEnd && l + T.Width > order.CrackStart)
        {
            var width2 = At<T>(laws.CrackFlowSquared, l);
            var inverse = T.Of(1) / T.Sqrt(m2 + width2);
            var crack = At<T>(laws.Crack, l) * inverse;
            loss += crack * m;
            slope += crack * width2 * inverse * inverse;
        }

        if (l < order.FrictionEnd)
        {
            var flow = T.Abs(m);
            var reynolds = T.Max(
                At<T>(laws.ReynoldsPerFlow, l) * flow,
                T.Of(ChurchillFriction.LowestReynolds)
            );
            ChurchillFriction.Evaluate(
                reynolds,
                At<T>(laws.ScaledRoughness, l),
                out var factor,
                out var logSlope
            );
            var resistance =
                factor * At<T>(laws.Friction, l) * T.Max(flow, At<T>(laws.FlowPerReynolds, l));
            loss += resistance * m;
            slope += resistance * (T.Of(2) + logSlope);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T At<T>(double[] values, int l)
        where T : struct, ILane<T> => T.Load(ref MemoryMarshal.GetArrayDataReference(values), l);
}
