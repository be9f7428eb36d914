using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Papers.Drawing;
using Hypocaust.Quantities;
using Hypocaust.Studies;

namespace Hypocaust.Papers.Floor;

/// <summary>A section through the heated floor: tube, concrete, insulation, with dimensions and temperatures.</summary>
public static class FloorSection
{
    /// <summary>Draws the floor in which a loop lies.</summary>
    /// <param name="design">The design.</param>
    /// <param name="answer">Its answer.</param>
    /// <param name="units">Units of the figures.</param>
    /// <param name="loop">Name of the loop; left out, the first.</param>
    /// <param name="shape">Screen or phone.</param>
    /// <param name="date">Date for the title block; left out, none.</param>
    public static Sheet Draw(
        HeatingDesign design,
        Answer answer,
        UnitSystem units,
        string? loop = null,
        SheetShape shape = SheetShape.Wide,
        string? date = null
    )
    {
        var title = design.Name + ": section through the floor";
        var found = design.Floor is { Loops.IsDefaultOrEmpty: false } floor
            ? floor.Loops.FirstOrDefault(one => loop is null || one.Name == loop)
            : null;
        if (found is null || !design.Floor!.Sections.TryGet(found.Section, out var section))
        {
            return Blank.Sheet("floor-section", title, "There is no loop to draw yet.", shape);
        }

        var tube = new PartLookup(design).Find(found.Tube) as PipePart;
        var answered = answer.Floor?.Loops.FirstOrDefault(one => one.Name == found.Name);
        return new FloorSectionSheet(
            found,
            section,
            tube?.Outer.Si ?? 0.016,
            answered,
            SectionPicture.Of(design, found, answered),
            units,
            shape == SheetShape.Wide ? 930 : 390
        ).Draw(design.Name, title, date);
    }
}
