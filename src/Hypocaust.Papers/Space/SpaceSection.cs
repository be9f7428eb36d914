using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Papers.Drawing;
using Hypocaust.Quantities;

namespace Hypocaust.Papers.Space;

/// <summary>A section of the building with arrows as wide as the heat that leaves.</summary>
public static class SpaceSection
{
    /// <summary>Draws the losses of the whole building by roof, walls, windows, doors, air and ground.</summary>
    /// <param name="design">The design.</param>
    /// <param name="answer">Its answer.</param>
    /// <param name="units">Units of the figures.</param>
    /// <param name="shape">Screen or phone.</param>
    /// <param name="date">Date for the title block; left out, none.</param>
    public static Sheet Draw(
        HeatingDesign design,
        Answer answer,
        UnitSystem units,
        SheetShape shape = SheetShape.Wide,
        string? date = null
    )
    {
        var title = design.Name + ": where the heat goes";
        return answer.Space is { Zones.IsEmpty: false } space
            ? new SpaceSectionSheet(space, units, shape == SheetShape.Wide).Draw(
                design.Name,
                title,
                date
            )
            : Blank.Sheet("space", title, "There is no answered heat loss to draw yet.", shape);
    }
}
