namespace Hypocaust.Hydraulics;

/// <summary>
/// What may change from solve to solve without rebuilding anything: the fluid in each branch, pump speeds, valve positions.
/// Branches are named by their place in <see cref="Hydraulics.Network.Branches"/>.
/// </summary>
public sealed class NetworkConditions
{
    private readonly double[] density;
    private readonly double[] viscosity;
    private readonly double[] speed;
    private readonly double[] kv;
    private readonly bool[] closed;

    /// <summary>All valves open as the network gives them, all pumps at the speed of their curve, one fluid everywhere.</summary>
    /// <param name="network">The network these conditions are for.</param>
    /// <param name="densityKgPerM3">Density, kg/m³, more than 0.</param>
    /// <param name="viscosityPaS">Dynamic viscosity, Pa·s, more than 0.</param>
    public NetworkConditions(Network network, double densityKgPerM3, double viscosityPaS)
    {
        Network = network;
        var count = network.Branches.Length;
        density = new double[count];
        viscosity = new double[count];
        speed = new double[count];
        kv = new double[count];
        closed = new bool[count];
        Array.Fill(speed, 1);
        for (var branch = 0; branch < count; branch++)
        {
            kv[branch] = network.Branches[branch].KvM3PerH ?? double.PositiveInfinity;
        }

        SetFluid(densityKgPerM3, viscosityPaS);
    }

    /// <summary>The network these conditions are for.</summary>
    public Network Network { get; }

    /// <summary>Density in each branch, kg/m³.</summary>
    public ReadOnlySpan<double> DensitiesKgPerM3 => density;

    /// <summary>Dynamic viscosity in each branch, Pa·s.</summary>
    public ReadOnlySpan<double> ViscositiesPaS => viscosity;

    /// <summary>Ratio of pump speed to the speed of its curve; 0 = stopped.</summary>
    public ReadOnlySpan<double> PumpSpeedRatios => speed;

    /// <summary>Kv of the valve in each branch, m³/h; infinite where there is none.</summary>
    public ReadOnlySpan<double> KvM3PerH => kv;

    /// <summary>Whether each branch is shut by hand or by its actuator.</summary>
    public ReadOnlySpan<bool> Closed => closed;

    /// <summary>Counts changes, so that a solver knows when its coefficients are out of date.</summary>
    internal int Version { get; private set; }

    /// <summary>Sets one fluid everywhere.</summary>
    /// <param name="densityKgPerM3">Density, kg/m³, more than 0.</param>
    /// <param name="viscosityPaS">Dynamic viscosity, Pa·s, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not a number more than 0.</exception>
    public void SetFluid(double densityKgPerM3, double viscosityPaS)
    {
        RequirePositive(densityKgPerM3, nameof(densityKgPerM3));
        RequirePositive(viscosityPaS, nameof(viscosityPaS));
        Array.Fill(density, densityKgPerM3);
        Array.Fill(viscosity, viscosityPaS);
        Version++;
    }

    /// <summary>Sets the fluid of one branch at its mean temperature.</summary>
    /// <param name="branch">Place of the branch.</param>
    /// <param name="densityKgPerM3">Density, kg/m³, more than 0.</param>
    /// <param name="viscosityPaS">Dynamic viscosity, Pa·s, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not a number more than 0.</exception>
    public void SetFluid(int branch, double densityKgPerM3, double viscosityPaS)
    {
        RequirePositive(densityKgPerM3, nameof(densityKgPerM3));
        RequirePositive(viscosityPaS, nameof(viscosityPaS));
        density[branch] = densityKgPerM3;
        viscosity[branch] = viscosityPaS;
        Version++;
    }

    /// <summary>Sets the speed of a pump.</summary>
    /// <param name="branch">Place of the pump's branch.</param>
    /// <param name="speedRatio">Speed over the speed of the curve, 0 (stopped) or more.</param>
    /// <exception cref="ArgumentException">There is no pump in this branch.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is negative or not a number.</exception>
    public void SetPumpSpeed(int branch, double speedRatio)
    {
        if (Network.Branches[branch].Pump is null)
        {
            throw new ArgumentException(
                $"There is no pump in '{Network.Branches[branch].Id}'.",
                nameof(branch)
            );
        }

        if (!(double.IsFinite(speedRatio) && speedRatio >= 0))
        {
            throw new ArgumentOutOfRangeException(nameof(speedRatio), speedRatio, "0 or more.");
        }

        speed[branch] = speedRatio;
        Version++;
    }

    /// <summary>Opens or shuts a branch completely.</summary>
    public void SetClosed(int branch, bool isClosed)
    {
        closed[branch] = isClosed;
        Version++;
    }

    /// <summary>Sets the Kv of a valve at its present position; for a position without any flow use <see cref="SetClosed"/>.</summary>
    /// <param name="branch">Place of the valve's branch.</param>
    /// <param name="kvM3PerH">Kv, m³/h, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is not a number more than 0.</exception>
    public void SetKv(int branch, double kvM3PerH)
    {
        RequirePositive(kvM3PerH, nameof(kvM3PerH));
        kv[branch] = kvM3PerH;
        Version++;
    }

    private static void RequirePositive(double value, string name)
    {
        if (!(double.IsFinite(value) && value > 0))
        {
            throw new ArgumentOutOfRangeException(name, value, "It must be a number more than 0.");
        }
    }
}
