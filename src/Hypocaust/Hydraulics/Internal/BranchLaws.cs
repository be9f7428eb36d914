using Hypocaust.Quantities;

namespace Hypocaust.Hydraulics.Internal;

/// <summary>
/// The laws of all branches as arrays of coefficients in mass flow, in the solver's order, ready for wide registers:
/// loss(m) = friction + q·m·√(m²+m0²) + linear·m + crack·m/√(m²+mc²) + constant, with q and linear chosen by the sign of m.
/// </summary>
internal sealed class BranchLaws
{
    /// <summary>m0: flow below which a quadratic loss becomes linear, kg/s (1 mg/s; loss is off by ½(m0/m)²).</summary>
    public const double SmallestFlowKgPerS = 1e-6;

    /// <summary>Volume flow over which a two-way cracking pressure is smoothed, m³/s.</summary>
    public const double CrackingFlowM3PerS = 1e-6;

    /// <summary>Resistance against backward flow while it is being found out whether a check valve closes, Pa·s/kg.</summary>
    public const double CheckValveBackwardPaSPerKg = 1e9;

    /// <summary>Loss of a branch for which none is given, Pa·s/kg.</summary>
    public const double LeastPaSPerKg = 1;

    private readonly Network network;
    private readonly BranchOrder order;
    private readonly double[] area2;
    private readonly double[] lengthFactor;
    private readonly double[] reynoldsFactor;

    public BranchLaws(Network network, BranchOrder order)
    {
        this.network = network;
        this.order = order;
        var padded = order.PaddedCount;
        area2 = new double[padded];
        lengthFactor = new double[padded];
        reynoldsFactor = new double[padded];
        Friction = new double[padded];
        ScaledRoughness = new double[padded];
        ReynoldsPerFlow = Ones(padded);
        FlowPerReynolds = Ones(padded);
        Forward = new double[padded];
        Backward = new double[padded];
        LinearForward = Ones(padded);
        LinearBackward = Ones(padded);
        Crack = new double[padded];
        CrackFlowSquared = Ones(padded);
        Constant = new double[padded];
        Array.Fill(ScaledRoughness, 0.001);
        for (var l = 0; l < order.Count; l++)
        {
            var branch = network.Branches[order.Public[l]];
            var diameter = branch.InnerDiameterM;
            if (diameter > 0)
            {
                var area = Math.PI * diameter * diameter / 4;
                area2[l] = 1 / (2 * area * area);
                reynoldsFactor[l] = 4 / (Math.PI * diameter);
                lengthFactor[l] = branch.LengthM / diameter * area2[l];
                ScaledRoughness[l] = 0.27 * branch.RoughnessM / diameter;
            }
        }
    }

    public double[] Friction { get; }
    public double[] ScaledRoughness { get; }
    public double[] ReynoldsPerFlow { get; }
    public double[] FlowPerReynolds { get; }
    public double[] Forward { get; }
    public double[] Backward { get; }
    public double[] LinearForward { get; }
    public double[] LinearBackward { get; }
    public double[] Crack { get; }
    public double[] CrackFlowSquared { get; }
    public double[] Constant { get; }

    /// <summary>Density at which a column of fluid would make no difference between two nodes, kg/m³.</summary>
    public double ReferenceDensity { get; private set; }

    /// <summary>Weight of a fluid column, taken off before solving so that buoyancy is not lost in rounding, Pa per m.</summary>
    public double ReferenceWeight => ReferenceDensity * PhysicalConstants.GravityMPerS2;

    /// <summary>ρ g (z_to − z_from) of a branch, Pa.</summary>
    public double ColumnPa(int l, double density) =>
        density * PhysicalConstants.GravityMPerS2 * order.RiseM[l];

    /// <summary>A plausible flow to start from, m³/s: the velocity given, or what 1 kPa drives through a valve, or 0.1 l/s.</summary>
    public double StartFlowM3PerS(int l, double velocityMPerS, double kvM3PerH) =>
        area2[l] > 0 ? velocityMPerS * Math.Sqrt(0.5 / area2[l])
        : double.IsFinite(kvM3PerH) ? 0.1 * kvM3PerH / 3600
        : 1e-4;

    /// <summary>Computes the coefficients for the given fluids, speeds and positions.</summary>
    public void Prepare(NetworkConditions conditions)
    {
        var densities = conditions.DensitiesKgPerM3;
        var sum = 0.0;
        foreach (var density in densities)
        {
            sum += density;
        }

        ReferenceDensity = densities.IsEmpty ? 0 : sum / densities.Length;
        for (var l = 0; l < order.Count; l++)
        {
            Prepare(l, order.Public[l], conditions);
        }
    }

    private void Prepare(int l, int index, NetworkConditions conditions)
    {
        var branch = network.Branches[index];
        var density = conditions.DensitiesKgPerM3[index];
        var specificVolume = 1 / density;
        if (reynoldsFactor[l] > 0)
        {
            ReynoldsPerFlow[l] = reynoldsFactor[l] / conditions.ViscositiesPaS[index];
            FlowPerReynolds[l] = conditions.ViscositiesPaS[index] / reynoldsFactor[l];
        }

        Friction[l] = lengthFactor[l] * specificVolume;
        var perK = area2[l] * specificVolume;
        // 1e5 Pa (ρ/1000) (3600 Q)²/Kv² with Q = m/ρ
        var valve =
            1.296e9 * specificVolume / (conditions.KvM3PerH[index] * conditions.KvM3PerH[index]);
        var quadratic = valve;
        var linear = 0.0;
        var constant = ColumnPa(l, density - ReferenceDensity);
        if (branch.Pump is { } pump)
        {
            var speed = conditions.PumpSpeedRatios[index];
            var scale = pump.ReferenceDensityKgPerM3 is { } held ? density / held : 1;
            constant -= speed * speed * pump.ShutOffPressurePa * scale;
            linear = speed * pump.LinearPaSPerM3 * scale * specificVolume;
            quadratic +=
                speed == 0 && StoppedLoss(pump, perK, specificVolume) is { } stopped
                    ? stopped
                    : pump.QuadraticPaS2PerM6 * scale * specificVolume * specificVolume;
        }

        Forward[l] = quadratic + (branch.LossCoefficient * perK);
        Backward[l] =
            quadratic
            + (
                (branch.ReverseLossCoefficient is > 0 and var k ? k : branch.LossCoefficient) * perK
            );
        if (Friction[l] == 0 && linear == 0 && (Forward[l] == 0 || Backward[l] == 0))
        {
            linear = LeastPaSPerKg;
        }

        LinearForward[l] = linear;
        LinearBackward[l] = branch.IsCheckValve ? CheckValveBackwardPaSPerKg : linear;
        Crack[l] = branch.IsCheckValve ? 0 : branch.CrackingPressurePa;
        CrackFlowSquared[l] = density * density * CrackingFlowM3PerS * CrackingFlowM3PerS;
        Constant[l] = constant + (branch.IsCheckValve ? branch.CrackingPressurePa : 0);
    }

    private static double? StoppedLoss(PumpLaw pump, double perK, double specificVolume) =>
        pump.StoppedKvM3PerH is { } kv ? 1.296e9 * specificVolume / (kv * kv)
        : pump.StoppedLossCoefficient is { } k ? k * perK
        : null;

    private static double[] Ones(int count)
    {
        var ones = new double[count];
        Array.Fill(ones, 1);
        return ones;
    }
}
