using System.Numerics;

namespace Hypocaust.Hydraulics.Internal;

/// <summary>
/// Several numbers computed at once, so that each formula stands in one place and runs at any width:
/// <see cref="Lane1"/>, <see cref="Lane4"/>, <see cref="Lane8"/>.
/// </summary>
internal interface ILane<T>
    : IAdditionOperators<T, T, T>,
        ISubtractionOperators<T, T, T>,
        IMultiplyOperators<T, T, T>,
        IDivisionOperators<T, T, T>
    where T : struct, ILane<T>
{
    static abstract int Width { get; }

    static abstract T Of(double value);

    static abstract T Load(ref double start, int offset);

    void Store(ref double start, int offset);

    static abstract T Abs(T value);

    static abstract T Max(T first, T second);

    static abstract T Sqrt(T value);

    static abstract T Exp(T value);

    static abstract T Log(T value);

    static abstract T MultiplyAdd(T first, T second, T added);

    static abstract T WhereNegative(T tested, T then, T otherwise);

    static abstract double Sum(T value);

    static abstract double Largest(T value);
}
