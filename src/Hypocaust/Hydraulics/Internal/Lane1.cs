using System.Runtime.CompilerServices;

namespace Hypocaust.Hydraulics.Internal;

/// <summary>One number at a time, for machines without wide registers and for single formulas.</summary>
internal readonly struct Lane1(double value) : ILane<Lane1>
{
    private readonly double v = value;

    public static int Width => 1;

    public double Value => v;

    public static Lane1 Of(double value) => new(value);

    public static Lane1 Load(ref double start, int offset) => new(Unsafe.Add(ref start, offset));

    public void Store(ref double start, int offset) => Unsafe.Add(ref start, offset) = v;

    public static Lane1 operator +(Lane1 left, Lane1 right) => new(left.v + right.v);

    public static Lane1 operator -(Lane1 left, Lane1 right) => new(left.v - right.v);

    public static Lane1 operator *(Lane1 left, Lane1 right) => new(left.v * right.v);

    public static Lane1 operator /(Lane1 left, Lane1 right) => new(left.v / right.v);

    public static Lane1 Abs(Lane1 value) => new(Math.Abs(value.v));

    public static Lane1 Max(Lane1 first, Lane1 second) => new(Math.Max(first.v, second.v));

    public static Lane1 Sqrt(Lane1 value) => new(Math.Sqrt(value.v));

    public static Lane1 Exp(Lane1 value) => new(Math.Exp(value.v));

    public static Lane1 Log(Lane1 value) => new(Math.Log(value.v));

    public static Lane1 MultiplyAdd(Lane1 first, Lane1 second, Lane1 added) =>
        new((first.v * second.v) + added.v);

    public static Lane1 WhereNegative(Lane1 tested, Lane1 then, Lane1 otherwise) =>
        tested.v < 0 ? then : otherwise;

    public static double Sum(Lane1 value) => value.v;

    public static double Largest(Lane1 value) => value.v;
}
