using Hypocaust.Design;

namespace Hypocaust.Plant;

/// <summary>Length of a loop's tube.</summary>
public static class LoopLength
{
    /// <summary>As measured, or area over spacing and the leader, m.</summary>
    /// <source>Geometry: a metre of tube serves its spacing in width (EN 1264-2, T); true paths replace it when they are laid.</source>
    public static double Metres(LoopDesign loop) =>
        loop.Length?.Si ?? ((loop.Area.Si / loop.Spacing.Si) + loop.Leader.Si);
}
