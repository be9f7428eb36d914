using System.Collections.Immutable;

namespace Hypocaust.Design;

/// <summary>The openings of each kind of part, by name.</summary>
public static class Ports
{
    /// <summary>Inlet of a part with one way through, and the only port of a part on a tee.</summary>
    public const string In = "in";

    /// <summary>Outlet of a part with one way through.</summary>
    public const string Out = "out";

    /// <summary>Closely spaced tees: from the primary circuit.</summary>
    public const string PrimaryIn = "primaryIn";

    /// <summary>Closely spaced tees: to the secondary circuit.</summary>
    public const string SecondaryOut = "secondaryOut";

    /// <summary>Closely spaced tees: back from the secondary circuit.</summary>
    public const string SecondaryIn = "secondaryIn";

    /// <summary>Closely spaced tees: back to the primary circuit.</summary>
    public const string PrimaryOut = "primaryOut";

    /// <summary>Manifold: water to the loops.</summary>
    public const string Supply = "supply";

    /// <summary>Manifold: water back from the loops.</summary>
    public const string Return = "return";

    private static readonly ImmutableArray<string> TwoPorts = [In, Out];
    private static readonly ImmutableArray<string> OnePort = [In];
    private static readonly ImmutableArray<string> TeePorts = ["a", "b", "c"];
    private static readonly ImmutableArray<string> SpacedTeesPorts =
    [
        PrimaryIn,
        SecondaryOut,
        SecondaryIn,
        PrimaryOut,
    ];
    private static readonly ImmutableArray<string> ManifoldPorts = [Supply, Return];

    /// <summary>The ports of a part, in the order in which water usually meets them; none for pipe.</summary>
    public static ImmutableArray<string> Of(Part part) =>
        part switch
        {
            HeaterPart or CirculatorPart or InlinePart => TwoPorts,
            ReliefPart or VesselPart or TappingPart => OnePort,
            TeePart => TeePorts,
            CloselySpacedTeesPart => SpacedTeesPorts,
            ManifoldPart => ManifoldPorts,
            _ => [],
        };

    /// <summary>Whether water passes the part from one port to the other.</summary>
    public static bool IsTwoPort(Part part) => part is HeaterPart or CirculatorPart or InlinePart;

    /// <summary>Whether the part sits on a tee: in the middle of a run the water passes by.</summary>
    public static bool SitsOnTee(Part part) => part is ReliefPart or VesselPart or TappingPart;

    /// <summary>Whether a port may be joined to nothing: only beside a valve that is shut.</summary>
    public static bool MayStayOpen(PlantItem item, Part part) =>
        item.Shut
        && part is InlinePart { Function: InlineFunction.ShutOff or InlineFunction.Purge };
}
