using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Floor;
using Hypocaust.Floor.Section;

namespace Hypocaust.Studies;

/// <summary>Temperatures through the floor of a loop, for a drawing: the section of the answer, with its field.</summary>
public static class SectionPicture
{
    /// <summary>The field of a loop at the mean temperature of its water; null where the loop has no section or its water stands still.</summary>
    /// <param name="design">The design.</param>
    /// <param name="loop">The loop.</param>
    /// <param name="answer">Its answer.</param>
    public static SectionField? Of(HeatingDesign design, LoopDesign loop, LoopAnswer? answer)
    {
        if (
            answer is not { Section: { } section, Running: { MeanWaterC: { } waterC } run }
            || design.Floor?.Sections.TryGet(loop.Section, out var buildUp) != true
            || new PartLookup(design).Find(loop.Tube) is not PipePart tube
        )
        {
            return null;
        }

        var slab = buildUp!.SlabBelow.Si / buildUp.SlabConductivity.Si;
        var below = new DownwardLayer("below", section.BelowM2KPerW + slab);
        var floor = SectionBuildUp.Of(FloorStudy.SpecificationOf(loop, buildUp, tube, [below])) with
        {
            FilmMKPerW = run.FilmResistanceMKPerW,
        };
        return FloorSection2D.Solve(floor).TryGet(out var solved)
            ? solved.FieldC(waterC, answer.IndoorC, answer.BelowC)
            : null;
    }
}
