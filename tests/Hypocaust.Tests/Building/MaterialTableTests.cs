using Hypocaust.Building;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Building;

public sealed class MaterialTableTests
{
    [Fact]
    public void All_RowByRow_AgreesWithTheReference()
    {
        var rows = ReferenceCsv.Table("materials_iso10456.csv");
        MaterialTable.All.Length.ShouldBe(rows.Count);
        foreach (var (material, row) in MaterialTable.All.Zip(rows))
        {
            material.ConductivityWPerMK.ShouldBe(row.Number("conductivity_W_mK"), row["material"]);
            material.DensityKgPerM3.ShouldBe(row.Number("density_kg_m3"), row["material"]);
            material.HeatCapacityJPerKgK.ShouldBe(row.Number("cp_J_kgK"), row["material"]);
            material.IsSeen.ShouldBe(row["status"] == "seen", row["material"]);
        }
    }

    // EN ISO 10456 as in the reference file: the row each everyday word must lead to
    [Theory]
    [InlineData("mineral wool", 0.037)]
    [InlineData(" XPS ", 0.034)]
    [InlineData("eps", 0.036)]
    [InlineData("softwood", 0.13)]
    [InlineData("concrete", 2.0)]
    [InlineData("Reinforced concrete", 2.3)]
    [InlineData("gravel", 2.0)]
    [InlineData("drywall", 0.25)]
    public void Find_EverydayName_GivesItsConductivity(string name, double conductivity) =>
        MaterialTable.Find(name).Value.ConductivityWPerMK.ShouldBe(conductivity);

    [Fact]
    public void Find_UnknownName_SuggestsSimilarOnes() =>
        MaterialTable
            .Find("rock wool")
            .Problems.Single()
            .Remedy.ShouldSatisfyAllConditions(
                text => text.ShouldContain("mineral wool"),
                text => text.ShouldContain("rock"),
                text => text.ShouldNotContain("copper")
            );
}
