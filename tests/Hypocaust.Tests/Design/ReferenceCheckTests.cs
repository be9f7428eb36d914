namespace Hypocaust.Tests.Design;

/// <summary>What a design says must fit together: each fault gives one problem at its path.</summary>
public sealed class ReferenceCheckTests
{
    public static TheoryData<string, string, string, string, string> Faults =>
        new()
        {
            {
                "\"material\": \"softwood\"",
                "\"material\": \"softwod\"",
                "unknown-reference",
                "$.building.constructions['stud wall'].layers[1].bridge.material",
                "\"softwood\""
            },
            {
                ", \"thickness\": \"1/2 in\" }",
                " }",
                "undefined",
                "$.building.constructions['stud wall'].layers[0]",
                "thickness"
            },
            {
                "{ \"resistance\": \"R-2\" }",
                "{ \"resistance\": \"R-2\", \"material\": \"softwood\" }",
                "defined-twice",
                "$.building.constructions['stud wall'].layers[2]",
                "keep one"
            },
            {
                "{ \"resistance\": \"R-2\" }",
                "{ \"thickness\": \"2 in\" }",
                "undefined",
                "$.building.constructions['stud wall'].layers[2]",
                "resistance"
            },
            {
                "{ \"conductivity\": \"0.13 W/mK\"",
                "{ \"conductivity\": \"0.13 W/mK\", \"material\": \"softwood\"",
                "defined-twice",
                "$.building.constructions['stud wall'].layers[3]",
                "keep one"
            },
            {
                "\"share\": \"15 %\", \"material\": \"softwood\"",
                "\"share\": \"15 %\"",
                "undefined",
                "$.building.constructions['stud wall'].layers[1].bridge",
                "material"
            },
            {
                "\"glass\": { \"u\": \"0.3 BTU/h·ft²·°F\" }",
                "\"glass\": { }",
                "undefined",
                "$.building.constructions.glass",
                "layers"
            },
            {
                "\"u\": \"0.5 W/m²K\", ",
                "",
                "undefined",
                "$.building.zones.shop.elements['lean-to']",
                "construction"
            },
            {
                "\"u\": \"0.5 W/m²K\", ",
                "\"u\": \"0.5 W/m²K\", \"construction\": \"glass\", ",
                "defined-twice",
                "$.building.zones.shop.elements['lean-to']",
                "keep one"
            },
            {
                "\"farSide\": \"30 °F\"",
                "\"farSide\": \"30 °F\", \"zone\": \"office\"",
                "defined-twice",
                "$.building.zones.shop.elements['lean-to']",
                "keep one"
            },
            {
                "\"zone\": \"office\" }",
                "\"zone\": \"ofice\" }",
                "unknown-reference",
                "$.building.zones.shop.elements['office side'].zone",
                "\"office\""
            },
            {
                "\"zone\": \"office\" }",
                "\"zone\": \"shop\" }",
                "own-zone",
                "$.building.zones.shop.elements['office side'].zone",
                "another"
            },
            {
                "\"construction\": \"glass\"",
                "\"construction\": \"glas\"",
                "unknown-reference",
                "$.building.zones.shop.elements['window 1'].construction",
                "\"glass\""
            },
            {
                "\"zone\": \"office\", \"section\"",
                "\"zone\": \"attic\", \"section\"",
                "unknown-reference",
                "$.floor.loops[2].zone",
                "shop, office"
            },
            {
                "\"zone\": \"office\", \"section\": \"slab\"",
                "\"zone\": \"office\", \"section\": \"slap\"",
                "unknown-reference",
                "$.floor.loops[2].section",
                "\"slab\""
            },
            {
                "\"tube\": \"my tube\"",
                "\"tube\": \"mi tube\"",
                "unknown-reference",
                "$.floor.loops[2].tube",
                "\"my tube\""
            },
            {
                "\"tube\": \"my tube\"",
                "\"tube\": \"tee\"",
                "wrong-part",
                "$.floor.loops[2].tube",
                "tube"
            },
            {
                "\"name\": \"desk\"",
                "\"name\": \"back\"",
                "name-twice",
                "$.floor.loops[2].name",
                "of its own"
            },
            {
                "\"manifold\": \"bars\"",
                "\"manifold\": \"bar\"",
                "unknown-reference",
                "$.floor.loops[0].manifold",
                "\"bars\""
            },
            {
                "\"manifold\": \"bars\"",
                "\"manifold\": \"tees\"",
                "wrong-part",
                "$.floor.loops[0].manifold",
                "a manifold"
            },
            {
                "{ \"name\": \"desk\"",
                "{ \"name\": \"extra\", \"zone\": \"shop\", \"section\": \"slab\", \"tube\": \"my tube\", \"spacing\": \"1 ft\", \"area\": \"9 m²\" }, { \"name\": \"desk\"",
                "too-many-loops",
                "$.floor.loops[3].manifold",
                "larger"
            },
            {
                "\"outer\": \"0.625 in\"",
                "\"outer\": \"0.4 in\"",
                "out-of-bounds",
                "$.parts['my tube'].outer",
                "wall"
            },
            {
                ",\n            { \"flow\": \"12 gpm\", \"head\": \"3 ft\" }",
                "",
                "bad-curve",
                "$.parts['used pump'].speeds[0].curve",
                "more points"
            },
            {
                "\"head\": \"3 ft\"",
                "\"head\": \"11 ft\"",
                "bad-curve",
                "$.parts['used pump'].speeds[0].curve[2]",
                "falls"
            },
            {
                "\"flow\": \"12 gpm\"",
                "\"flow\": \"5 gpm\"",
                "bad-curve",
                "$.parts['used pump'].speeds[0].curve[2]",
                "order"
            },
            {
                "\"part\": \"used pump\"",
                "\"part\": \"used pmp\"",
                "unknown-reference",
                "$.plant.items.pump1.part",
                "\"used pump\""
            },
            {
                "\"t1\": { \"part\": \"thermometer\"",
                "\"t1\": { \"part\": \"my tube\"",
                "wrong-part",
                "$.plant.items.t1.part",
                "run"
            },
            {
                "\"setPoint\": \"105 °F\", ",
                "",
                "missing",
                "$.plant.items.boiler.setPoint",
                "setPoint"
            },
            { "\"speed\": 2, ", "", "missing", "$.plant.items.pump2.speed", "slowest" },
            {
                "\"speed\": 2",
                "\"speed\": 4",
                "out-of-bounds",
                "$.plant.items.pump2.speed",
                "1 to 3"
            },
            {
                "\"part\": \"used pump\"",
                "\"part\": \"used pump\", \"speed\": 2",
                "out-of-bounds",
                "$.plant.items.pump1.speed",
                "leave"
            },
            {
                "\"part\": \"used pump\"",
                "\"part\": \"used pump\", \"setPoint\": \"40 °C\"",
                "setting-of-another-part",
                "$.plant.items.pump1.setPoint",
                "heater"
            },
            {
                "\"part\": \"relief 30 psi\"",
                "\"part\": \"relief 30 psi\", \"shut\": true",
                "setting-of-another-part",
                "$.plant.items.relief.shut",
                "valve"
            },
            {
                "\"part\": \"thermometer\"",
                "\"part\": \"thermometer\", \"precharge\": \"1 bar\"",
                "setting-of-another-part",
                "$.plant.items.t1.precharge",
                "vessel"
            },
            {
                "\"part\": \"thermometer\"",
                "\"part\": \"thermometer\", \"off\": true",
                "setting-of-another-part",
                "$.plant.items.t1.off",
                "circulator"
            },
            {
                "\"part\": \"manifold 3 loops\"",
                "\"part\": \"manifold 3 loops\", \"speed\": 1",
                "setting-of-another-part",
                "$.plant.items.bars.speed",
                "circulator"
            },
            {
                "\"pump2\", \"t1\"",
                "\"pmup2\", \"t1\"",
                "unknown-reference",
                "$.plant.runs[3].run[1]",
                "\"pump2\""
            },
            {
                "\"bars.supply\"",
                "\"bars.suply\"",
                "no-such-port",
                "$.plant.runs[3].run[5]",
                "\"supply\""
            },
            {
                "\"bars.supply\"",
                "\"bars\"",
                "port-needed",
                "$.plant.runs[3].run[5]",
                "bars.supply"
            },
            {
                "\"5 ft, 3 elbows, 1 tee\", \"branch\"",
                "\"5 ft, 3 elbows, 1 tee\", \"branch.a\"",
                "port-needed",
                "$.plant.runs[1].run[2]",
                "branch.a"
            },
            {
                "\"tank\", \"pump1\", \"1.5 ft\", \"tees.primaryIn\"",
                "\"tank\", \"pump1\", \"1.5 ft\"",
                "pipe-at-end",
                "$.plant.runs[0].run[6]",
                "part"
            },
            {
                "\"branch.c\", \"6 in\", \"spare.in\"",
                "\"branch.c\"",
                "run-too-short",
                "$.plant.runs[2].run",
                "from"
            },
            {
                "\"bars.return\", \"4 ft",
                "\"bars.return\", \"t1\", \"4 ft",
                "port-twice",
                "$.plant.runs[4].run[1]",
                "tee"
            },
            { ", \"t1\", \"1 ft\"", ", \"1 ft\"", "not-piped", "$.plant.items.t1", "run" },
            { "\"spare.in\"", "\"spare.out\"", "", "", "" },
            {
                "\"shut\": true }\n    },\n",
                "\"shut\": false }\n    },\n",
                "port-open",
                "$.plant.items.spare",
                "shut"
            },
            {
                "\"tank\", \"pump1\", \"1.5 ft\"",
                "\"tank\", \"pump1.out\", \"1.5 ft\"",
                "",
                "",
                ""
            },
            {
                "\"pipe\": \"copper M 3/4\",\n",
                "\"pipe\": \"copper M 3/5\",\n",
                "unknown-reference",
                "$.plant.runs[0].pipe",
                "copper M 3/"
            },
            {
                "\"pipe\": \"copper M 3/4\",\n",
                "\"pipe\": \"tee\",\n",
                "wrong-part",
                "$.plant.runs[0].pipe",
                "pipe"
            },
            {
                "\"2 ft, 1 elbow\"",
                "\"2 ft, 1 bend\"",
                "not-a-step",
                "$.plant.runs[0].run[2]",
                "elbows"
            },
            {
                "\"2 ft, 1 elbow\"",
                "\"2,5 ft, 1 elbow\"",
                "comma-in-number",
                "$.plant.runs[0].run[2]",
                "point"
            },
            { "\"2 ft, 1 elbow\"", "\"2\"", "no-unit", "$.plant.runs[0].run[2]", "ft" },
            { "\"2 ft, 1 elbow\"", "\"600 m\"", "out-of-bounds", "$.plant.runs[0].run[2]", "500" },
        };

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_gives_one_problem_at_its_path(
        string old,
        string fault,
        string code,
        string path,
        string remedy
    )
    {
        var problems = TestDesigns.ProblemsOf(TestDesigns.With(old, fault));
        if (code.Length == 0)
        {
            problems.ShouldBeEmpty(string.Join("\n", problems));
            return;
        }

        problems
            .Select(problem => (problem.Code, problem.Place))
            .ShouldBe([(code, path)], string.Join("\n", problems));
        problems[0].Remedy.ShouldContain(remedy);
        problems[0].Position.ShouldNotBeNull();
    }

    [Fact]
    public void With_two_manifolds_each_loop_must_name_its_own()
    {
        var text = TestDesigns
            .With("\"bars\": {", "\"bars 2\": { \"part\": \"manifold 3 loops\" }, \"bars\": {")
            .Replace(
                "{ \"pipe\": \"copper M 3/4\", \"run\": [\"branch.c\"",
                "{ \"pipe\": \"copper M 3/4\", \"run\": [\"bars 2.supply\", \"bars 2.return\"] }, { \"pipe\": \"copper M 3/4\", \"run\": [\"branch.c\"",
                StringComparison.Ordinal
            );
        TestDesigns
            .ProblemsOf(text)
            .Select(problem => (problem.Code, problem.Place))
            .ShouldBe([
                ("which-manifold", "$.floor.loops[1].manifold"),
                ("which-manifold", "$.floor.loops[2].manifold"),
            ]);
    }
}
