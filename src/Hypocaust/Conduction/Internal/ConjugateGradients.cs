using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Hypocaust.Conduction.Internal;

/// <summary>Conjugate gradients on the heat balances, preconditioned by <see cref="ColumnMultigrid"/>.</summary>
/// <remarks>
/// The preconditioner hands back A z beside z, so that no other product with the matrix is needed; the caller checks the true
/// imbalance at the end.
/// </remarks>
internal sealed class ConjugateGradients(ColumnMultigrid multigrid)
{
    private const int Lanes = SplitField.Lanes;

    private readonly SplitField x = new(multigrid.Columns, multigrid.Rows);
    private readonly SplitField r = new(multigrid.Columns, multigrid.Rows);
    private readonly SplitField z = new(multigrid.Columns, multigrid.Rows);
    private readonly SplitField w = new(multigrid.Columns, multigrid.Rows);
    private readonly SplitField p = new(multigrid.Columns, multigrid.Rows);
    private readonly SplitField q = new(multigrid.Columns, multigrid.Rows);

    public (ConductionStatus Status, int Iterations) Solve(
        ReadOnlySpan<double> heat,
        Span<double> temperatures,
        ConductionSolverOptions options
    )
    {
        foreach (var field in (SplitField[])[x, p, q])
        {
            Array.Clear(field.Odd);
            Array.Clear(field.Even);
        }

        r.CopyFrom(heat);
        var (status, iterations) = Iterate(options);
        x.CopyTo(temperatures);
        return (status, iterations);
    }

    private (ConductionStatus Status, int Iterations) Iterate(ConductionSolverOptions options)
    {
        var (first, before) = (0.0, 0.0);
        for (var iteration = 0; ; iteration++)
        {
            multigrid.Apply(r, z, w);
            var rz = Dot(r.Odd, z.Odd) + Dot(r.Even, z.Even);
            first = iteration == 0 ? rz : first;
            if (rz <= first * options.Tolerance * options.Tolerance)
            {
                return (ConductionStatus.Converged, iteration);
            }

            if (!(rz > 0 && double.IsFinite(rz)))
            {
                return (ConductionStatus.Breakdown, iteration);
            }

            if (iteration == options.MostIterations)
            {
                return (ConductionStatus.IterationLimit, iteration);
            }

            var beta = iteration == 0 ? 0 : rz / before;
            var pq =
                Turn(z.Odd, w.Odd, p.Odd, q.Odd, beta) + Turn(z.Even, w.Even, p.Even, q.Even, beta);
            var alpha = rz / pq;
            Step(x.Odd, r.Odd, p.Odd, q.Odd, alpha);
            Step(x.Even, r.Even, p.Even, q.Even, alpha);
            before = rz;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static double Dot(double[] first, double[] second)
    {
        ref var a = ref MemoryMarshal.GetArrayDataReference(first);
        ref var b = ref MemoryMarshal.GetArrayDataReference(second);
        var sum = Vector512<double>.Zero;
        for (nuint at = 0; at < (nuint)first.Length; at += Lanes)
        {
            sum = Vector512.FusedMultiplyAdd(
                Vector512.LoadUnsafe(ref a, at),
                Vector512.LoadUnsafe(ref b, at),
                sum
            );
        }

        return Vector512.Sum(sum);
    }

    // p = z + βp, q = w + βq; gives p·q
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static double Turn(double[] z, double[] w, double[] p, double[] q, double beta)
    {
        ref var zAt = ref MemoryMarshal.GetArrayDataReference(z);
        ref var wAt = ref MemoryMarshal.GetArrayDataReference(w);
        ref var pAt = ref MemoryMarshal.GetArrayDataReference(p);
        ref var qAt = ref MemoryMarshal.GetArrayDataReference(q);
        var factor = Vector512.Create(beta);
        var sum = Vector512<double>.Zero;
        for (nuint at = 0; at < (nuint)z.Length; at += Lanes)
        {
            var direction = Vector512.FusedMultiplyAdd(
                factor,
                Vector512.LoadUnsafe(ref pAt, at),
                Vector512.LoadUnsafe(ref zAt, at)
            );
            var product = Vector512.FusedMultiplyAdd(
                factor,
                Vector512.LoadUnsafe(ref qAt, at),
                Vector512.LoadUnsafe(ref wAt, at)
            );
            direction.StoreUnsafe(ref pAt, at);
            product.StoreUnsafe(ref qAt, at);
            sum = Vector512.FusedMultiplyAdd(direction, product, sum);
        }

        return Vector512.Sum(sum);
    }

    // x = x + αp, r = r − αq
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Step(double[] x, double[] r, double[] p, double[] q, double alpha)
    {
        ref var xAt = ref MemoryMarshal.GetArrayDataReference(x);
        ref var rAt = ref MemoryMarshal.GetArrayDataReference(r);
        ref var pAt = ref MemoryMarshal.GetArrayDataReference(p);
        ref var qAt = ref MemoryMarshal.GetArrayDataReference(q);
        var (ahead, back) = (Vector512.Create(alpha), Vector512.Create(-alpha));
        for (nuint at = 0; at < (nuint)x.Length; at += Lanes)
        {
            Vector512
                .FusedMultiplyAdd(
                    ahead,
                    Vector512.LoadUnsafe(ref pAt, at),
                    Vector512.LoadUnsafe(ref xAt, at)
                )
                .StoreUnsafe(ref xAt, at);
            Vector512
                .FusedMultiplyAdd(
                    back,
                    Vector512.LoadUnsafe(ref qAt, at),
                    Vector512.LoadUnsafe(ref rAt, at)
                )
                .StoreUnsafe(ref rAt, at);
        }
    }
}
