using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Why;

namespace Hypocaust.Tests.Studies;

public sealed class FloorBeyondTablesTests
{
    private static Answer Edited(string path, string value) =>
        Study.Solve(Examples.Document("pottery-studio").Edit(path, value).Value.Design);

    private static string Section(string name) =>
        $"$.floor.sections.{Examples.Document("pottery-studio").Design.Floor!.Loops[0].Section}.{name}";

    [Fact]
    public void Every_loop_compares_the_table_with_its_section()
    {
        foreach (var loop in Examples.Answer("pottery-studio").Floor!.Loops)
        {
            loop.Method.ShouldBe(LoopAnswer.ByTable);
            var section = loop.Section.ShouldNotBeNull();
            section
                .TableDifferencePercent.ShouldNotBeNull()
                .ShouldBe(
                    100 * ((loop.TransmissionWPerM2K / section.TransmissionWPerM2K) - 1),
                    1e-9
                );

            // the most that floor_methods.csv and section2d.csv show of the table against independent solutions
            section.TableDifferencePercent.Value.ShouldBeInRange(-20, 25);
        }
    }

    [Fact]
    public void Covering_beyond_the_tables_is_answered_and_explained()
    {
        var answer = Edited(Section("covering"), "0.3 m²K/W");
        answer.Problems.ShouldBeEmpty();
        var plain = Examples.Answer("pottery-studio").Floor!;
        var loops = answer.Floor!.Loops;
        loops.ShouldAllBe(loop => loop.Method == LoopAnswer.BySection && loop.Factors == null);
        foreach (var (covered, bare) in loops.Zip(plain.Loops))
        {
            covered.TransmissionWPerM2K.ShouldBeLessThan(bare.TransmissionWPerM2K);
            covered.Accuracy.ShouldContain("do not reach");
        }

        // the heat of the loops is what their water brings
        var cp = answer.Plant!.Fluid.HeatCapacityJPerKgK;
        foreach (var run in loops.Select(loop => loop.Running!))
        {
            (run.HeatUpW + run.HeatDownW).ShouldBe(
                run.FlowKgPerS * cp * (run.SupplyC!.Value - run.ReturnC!.Value),
                1e-6 * run.HeatUpW
            );
        }

        Explained(answer);
    }

    [Fact]
    public void Slab_below_the_tube_spreads_heat()
    {
        var without = Examples.Answer("pottery-studio").Floor!.Loops[0].Section!;
        var with = Edited(Section("slabBelow"), "60 mm").Floor!.Loops[0].Section!;
        with.BelowM2KPerW.ShouldBeLessThan(without.BelowM2KPerW);

        // more concrete around the tube takes the heat further sideways: more of it reaches the surface, more evenly
        with.TransmissionWPerM2K.ShouldBeGreaterThan(without.TransmissionWPerM2K);
        with.WarmestShare.ShouldBeLessThan(without.WarmestShare);
    }

    [Fact]
    public void Tube_deep_in_thick_concrete_has_a_third_opinion()
    {
        var document = Examples
            .Document("pottery-studio")
            .Edit(Section("cover"), "90 mm")
            .Value.Edit(Section("slabBelow"), "90 mm")
            .Value;
        var answer = Study.Solve(document.Design);
        var section = answer.Floor!.Loops[0].Section!;

        // within its range the method of ISO 11855-2 and conduction agree; 2 % leaves room for what the range allows
        section
            .ResistanceMethodWPerM2K.ShouldNotBeNull()
            .ShouldBe(section.TransmissionWPerM2K, 0.02 * section.TransmissionWPerM2K);
        Explained(answer);
    }

    // every number explained, and every formula shown gives the number shown
    private static void Explained(Answer answer)
    {
        foreach (var (path, value) in AnswerPath.Numbers(answer.Floor!))
        {
            var derivation = WhyBook.Derive(answer, "floor." + path).ShouldNotBeNull(path);
            if (derivation.Compute is { } compute)
            {
                compute([.. derivation.Inputs.Select(input => input.Value)])
                    .ShouldBe(value, 1e-6 * Math.Max(1e-3, Math.Abs(value)), path);
            }
        }
    }
}
