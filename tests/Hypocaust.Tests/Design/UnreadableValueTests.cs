namespace Hypocaust.Tests.Design;

/// <summary>A value that cannot be read is told once; nothing is said that only follows from it.</summary>
public sealed class UnreadableValueTests
{
    // the rest of a section whose name is taken goes into a reserved one, which holds anything
    [Theory]
    [InlineData("\"parts\": {", "\"parts\": 5, \"energy\": {", "$.parts")]
    [InlineData("\"runs\": [\n", "\"runs\": 3 }, \"energy\": { \"runs\": [\n", "$.plant.runs")]
    [InlineData(
        "\"head\": \"11 ft\"",
        "\"head\": 11",
        "$.parts['used pump'].speeds[0].curve[1].head"
    )]
    [InlineData("\"outer\": \"0.625 in\"", "\"outer\": true", "$.parts['my tube'].outer")]
    [InlineData("\"part\": \"used pump\"", "\"part\": 7", "$.plant.items.pump1.part")]
    [InlineData("\"part\": \"used pump\"", "\"prt\": \"used pump\"", "$.plant.items.pump1.prt")]
    [InlineData("\"u\": \"0.3 BTU/h·ft²·°F\"", "\"u\": 0.3", "$.building.constructions.glass.u")]
    [InlineData(
        "\"thickness\": \"1/2 in\" }",
        "\"thickness\": 12 }",
        "$.building.constructions['stud wall'].layers[0].thickness"
    )]
    [InlineData(
        "\"branch.c\", \"6 in\", \"spare.in\"",
        "\"branch.c\", \"6 in\", \"spare..in\"",
        "$.plant.runs[2].run[2]"
    )]
    [InlineData(
        "\"zone\": \"office\", \"section\"",
        "\"zone\": 2, \"section\"",
        "$.floor.loops[2].zone"
    )]
    [InlineData("\"setPoint\": \"105 °F\"", "\"setPoint\": 105", "$.plant.items.boiler.setPoint")]
    [InlineData("\"site\": {", "\"site\": 1, \"energy\": {", "$.site")]
    public void One_unreadable_value_gives_one_problem(string old, string fault, string path)
    {
        var problems = TestDesigns.ProblemsOf(TestDesigns.With(old, fault));
        problems.ShouldHaveSingleItem(string.Join("\n", problems)).Place.ShouldBe(path);
    }
}
