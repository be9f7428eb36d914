namespace Hypocaust.Hydraulics;

/// <summary>A point of the network where branches meet.</summary>
/// <param name="Id">Name, unique among the nodes.</param>
/// <param name="ElevationM">Height above any fixed level, m.</param>
/// <param name="GivenPressurePa">Pressure held here (where the expansion vessel connects), Pa; <see langword="null"/> where the pressure is to be found.</param>
public sealed record Node(string Id, double ElevationM = 0, double? GivenPressurePa = null);

/// <summary>
/// A way from one node to another: pipe, valve, check valve, pump, or all of them one after another.
/// Flow is positive from <paramref name="From"/> to <paramref name="To"/>.
/// </summary>
/// <param name="Id">Name, unique among the branches.</param>
/// <param name="From">Node where positive flow enters.</param>
/// <param name="To">Node where positive flow leaves.</param>
/// <remarks>
/// The terms add up: pipe friction (Churchill 1977) + <see cref="LossCoefficient"/> + <see cref="KvM3PerH"/> +
/// <see cref="CrackingPressurePa"/> − <see cref="Pump"/>. A branch without any loss is given 1 Pa at 1 kg/s, so that the flow stays determined.
/// </remarks>
public sealed record Branch(string Id, string From, string To)
{
    /// <summary>Inside diameter, m; needed where there is a length or a loss coefficient.</summary>
    public double InnerDiameterM { get; init; }

    /// <summary>Length of straight pipe, m, 0 or more.</summary>
    public double LengthM { get; init; }

    /// <summary>Equivalent sand roughness of the wall, m, 0 or more.</summary>
    public double RoughnessM { get; init; }

    /// <summary>Sum of the loss coefficients K of the fittings, loss = K ρ v²/2 on the inside diameter.</summary>
    public double LossCoefficient { get; init; }

    /// <summary>K for flow from <see cref="To"/> to <see cref="From"/>; <see langword="null"/> where it is the same.</summary>
    public double? ReverseLossCoefficient { get; init; }

    /// <summary>Flow coefficient of a valve, m³/h of water at 1 bar (IEC 60534); <see langword="null"/> where there is none.</summary>
    public double? KvM3PerH { get; init; }

    /// <summary>
    /// Pressure that flow must overcome before it starts, Pa. In a check valve it is exact; in any other branch it works
    /// both ways and is smoothed over flows of about 1e-6 m³/s.
    /// </summary>
    public double CrackingPressurePa { get; init; }

    /// <summary>Whether flow from <see cref="To"/> to <see cref="From"/> is held back completely.</summary>
    public bool IsCheckValve { get; init; }

    /// <summary>The pump in this branch, if any, lifting pressure in the positive direction.</summary>
    public PumpLaw? Pump { get; init; }
}

/// <summary>
/// Pressure rise of a pump as the solver uses it: n²·H0 − n·a·Q − b·|Q|·Q with n the ratio of speed to the speed of the curve
/// and Q the volume flow in m³/s (affinity laws of geometrically similar operation).
/// </summary>
/// <param name="ShutOffPressurePa">H0: rise without flow at n = 1, Pa, 0 or more.</param>
/// <param name="LinearPaSPerM3">a, Pa·s/m³, 0 or more.</param>
/// <param name="QuadraticPaS2PerM6">b, Pa·s²/m⁶, 0 or more.</param>
/// <remarks><see cref="PumpCurve.ToLaw"/> makes one from a curve of head.</remarks>
public sealed record PumpLaw(
    double ShutOffPressurePa,
    double LinearPaSPerM3,
    double QuadraticPaS2PerM6
)
{
    /// <summary>
    /// Density at which the pressures hold, kg/m³; they scale with the density of the branch. <see langword="null"/>: they hold at any density.
    /// </summary>
    public double? ReferenceDensityKgPerM3 { get; init; }

    /// <summary>Kv of the stopped pump, m³/h, both directions; <see langword="null"/>: see <see cref="StoppedLossCoefficient"/>.</summary>
    public double? StoppedKvM3PerH { get; init; }

    /// <summary>
    /// K of the stopped pump on the branch's inside diameter; where neither this nor <see cref="StoppedKvM3PerH"/> is given,
    /// the stopped pump resists with b·|Q|·Q.
    /// </summary>
    public double? StoppedLossCoefficient { get; init; }
}
