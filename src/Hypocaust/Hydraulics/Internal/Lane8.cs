using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Hypocaust.Hydraulics.Internal;

/// <summary>Eight numbers at once.</summary>
internal readonly struct Lane8(Vector512<double> value) : ILane<Lane8>
{
    private readonly Vector512<double> v = value;

    public static int Width => 8;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Of(double value) => new(Vector512.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Load(ref double start, int offset) =>
        new(Vector512.LoadUnsafe(ref start, (nuint)offset));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Store(ref double start, int offset) => v.StoreUnsafe(ref start, (nuint)offset);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator +(Lane8 left, Lane8 right) => new(left.v + right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator -(Lane8 left, Lane8 right) => new(left.v - right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator *(Lane8 left, Lane8 right) => new(left.v * right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator /(Lane8 left, Lane8 right) => new(left.v / right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Abs(Lane8 value) => new(Vector512.Abs(value.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Max(Lane8 first, Lane8 second) =>
        new(Vector512.MaxNative(first.v, second.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Sqrt(Lane8 value) => new(Vector512.Sqrt(value.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Exp(Lane8 value) => new(Vector512.Exp(value.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Log(Lane8 value) => new(Vector512.Log(value.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 MultiplyAdd(Lane8 first, Lane8 second, Lane8 added) =>
        new(Vector512.MultiplyAddEstimate(first.v, second.v, added.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 WhereNegative(Lane8 tested, Lane8 then, Lane8 otherwise) =>
        new(
            Vector512.ConditionalSelect(
                Vector512.LessThan(tested.v, Vector512<double>.Zero),
                then.v,
                otherwise.v
            )
        );

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Sum(Lane8 value) => Vector512.Sum(value.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Largest(Lane8 value) =>
        Lane4.Largest(new(Vector256.MaxNative(value.v.GetLower(), value.v.GetUpper())));
}
