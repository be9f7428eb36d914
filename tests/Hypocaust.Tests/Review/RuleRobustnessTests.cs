using Hypocaust.Design;
using Hypocaust.Review;

namespace Hypocaust.Tests.Review;

/// <summary>Rules meet still water, missing parts and half a design; they may find nothing, but must not throw or talk nonsense.</summary>
public sealed class RuleRobustnessTests
{
    private const int Seed = 20251;
    private const int Mixes = 150;

    public static TheoryData<string> Rules => [.. RuleBook.Rules.Select(rule => rule.Id)];

    private static IEnumerable<Func<DesignEdits, DesignEdits>> Halvings() =>
        [
            design => design.Remove("floor"),
            design => design.Remove("plant"),
            design => SwitchOff(design),
            design => design.Set("floor/sections/studio slab/covering", "0.9 m²K/W"),
            design => Shut(design),
        ];

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_faulty_design_of_which_half_is_missing_is_still_reviewed(string id)
    {
        var fixture = RuleFixtures.All.Single(one => one.Id == id);
        foreach (var halve in Halvings())
        {
            var design = fixture.Triggers();
            if (design.Text.Contains("studio slab", StringComparison.Ordinal))
            {
                ReviewOf(halve(design));
            }
        }
    }

    [Fact]
    public void Mixes_of_faults_are_reviewed()
    {
        var random = new Random(Seed);
        var edits = MutantCatalogue.Of(Examples.Studio()).ToList();
        var read = 0;
        for (var i = 0; i < Mixes; i++)
        {
            var design = Examples.Studio();
            for (var fault = 0; fault < 4; fault++)
            {
                var mutant = edits[random.Next(edits.Count)];
                if (mutant.AppliesTo(design))
                {
                    mutant.Change(design);
                }
            }

            read += ReviewOf(design) ? 1 : 0;
        }

        read.ShouldBeGreaterThan(Mixes / 2);
    }

    private static bool ReviewOf(DesignEdits design)
    {
        if (!DesignFile.Read(design.Text).TryGet(out var document))
        {
            return false;
        }

        var answer = Study.Solve(document.Design);
        foreach (var finding in answer.Review.Findings)
        {
            RuleBookTests.ShouldBeWellSaid(finding);
        }

        return true;
    }

    private static DesignEdits SwitchOff(DesignEdits design)
    {
        foreach (
            var item in design.Items.Where(item =>
                item.Key.Contains("pump", StringComparison.Ordinal)
            )
        )
        {
            item.Value!["off"] = true;
        }

        return design;
    }

    private static DesignEdits Shut(DesignEdits design)
    {
        foreach (
            var item in design.Items.Where(item =>
                item.Key.Contains("valve", StringComparison.Ordinal)
            )
        )
        {
            item.Value!["shut"] = true;
        }

        return design;
    }
}
