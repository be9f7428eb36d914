namespace Hypocaust.Building;

/// <summary>What lies on the far side of an element.</summary>
/// <remarks>A closed set: use the nested records.</remarks>
public abstract record Boundary
{
    private Boundary() { }

    /// <summary>The open air.</summary>
    public sealed record Outside : Boundary;

    /// <summary>The soil. The element's U is the equivalent one of <see cref="SlabOnGround"/>; the loss counts from the annual mean outdoors, because soil answers slowly.</summary>
    public sealed record Ground : Boundary;

    /// <summary>An unheated space whose temperature on the design day is known, °C.</summary>
    /// <param name="TemperatureC">Of the space, °C.</param>
    public sealed record UnheatedAt(double TemperatureC) : Boundary;

    /// <summary>An unheated space of unknown temperature.</summary>
    /// <param name="ReductionFactor">b_u, the part of the indoor to outdoor difference that lies across the element, 0 to 1 (0.5 cellar with windows, 0.8 garage-like, 0.9 ventilated attic: EN 12831 annex, from memory).</param>
    public sealed record UnheatedByFactor(double ReductionFactor) : Boundary;

    /// <summary>Another zone of this building at its own temperature.</summary>
    /// <param name="ZoneName">Its name.</param>
    public sealed record OtherZone(string ZoneName) : Boundary;
}
