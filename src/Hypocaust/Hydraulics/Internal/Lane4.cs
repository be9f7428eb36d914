using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Hypocaust.Hydraulics.Internal;

/// <summary>Four numbers at once.</summary>
internal readonly struct Lane4(Vector256<double> value) : ILane<Lane4>
{
    private readonly Vector256<double> v = value;

    public static int Width => 4;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Of(double value) => new(Vector256.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Load(ref double start, int offset) =>
        new(Vector256.LoadUnsafe(ref start, (nuint)offset));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Store(ref double start, int offset) => v.StoreUnsafe(ref start, (nuint)offset);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 operator +(Lane4 left, Lane4 right) => new(left.v + right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 operator -(Lane4 left, Lane4 right) => new(left.v - right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 operator *(Lane4 left, Lane4 right) => new(left.v * right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 operator /(Lane4 left, Lane4 right) => new(left.v / right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Abs(Lane4 value) => new(Vector256.Abs(value.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Max(Lane4 first, Lane4 second) =>
        new(Vector256.MaxNative(first.v, second.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Sqrt(Lane4 value) => new(Vector256.Sqrt(value.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Exp(Lane4 value) => new(Vector256.Exp(value.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Log(Lane4 value) => new(Vector256.Log(value.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 MultiplyAdd(Lane4 first, Lane4 second, Lane4 added) =>
        new(Vector256.MultiplyAddEstimate(first.v, second.v, added.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 WhereNegative(Lane4 tested, Lane4 then, Lane4 otherwise) =>
        new(
            Vector256.ConditionalSelect(
                Vector256.LessThan(tested.v, Vector256<double>.Zero),
                then.v,
                otherwise.v
            )
        );

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Sum(Lane4 value) => Vector256.Sum(value.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Largest(Lane4 value) =>
        Math.Max(Math.Max(value.v[0], value.v[1]), Math.Max(value.v[2], value.v[3]));
}
