using System.Xml.Linq;
using Hypocaust.Design;
using Hypocaust.Papers.Drawing;
using Hypocaust.Papers.Floor;
using Hypocaust.Papers.Piping;
using Hypocaust.Papers.Pressure;
using Hypocaust.Papers.Pumps;
using Hypocaust.Papers.Space;
using Hypocaust.Papers.Tests.Plants;
using Hypocaust.Quantities;

namespace Hypocaust.Papers.Tests;

public sealed class Rendering
{
    /// <summary>Set HYPOCAUST_DRAWINGS to a directory to keep the files and look at them.</summary>
    [Fact]
    public void Every_drawing_can_be_written_to_a_file_that_reads_back_as_SVG()
    {
        var kept = Environment.GetEnvironmentVariable("HYPOCAUST_DRAWINGS");
        var to = string.IsNullOrEmpty(kept)
            ? Directory.CreateTempSubdirectory("hypocaust-drawings").FullName
            : Directory.CreateDirectory(kept).FullName;
        WriteAll(to);
        var files = Directory.GetFiles(to, "*.svg");
        files.Length.ShouldBeGreaterThan(80);
        foreach (var file in files)
        {
            XDocument.Load(file).Root!.Name.LocalName.ShouldBe("svg");
        }

        if (string.IsNullOrEmpty(kept))
        {
            Directory.Delete(to, recursive: true);
        }
    }

    private static void WriteAll(string to)
    {
        foreach (var name in SamplePlants.Names)
        {
            var design = SamplePlants.Of(name);
            foreach (var shape in Enum.GetValues<SheetShape>())
            {
                foreach (var answered in (bool[])[true, false])
                {
                    var answer = answered ? SampleAnswers.Of(design) : SampleAnswers.None(design);
                    var sheet = PlantSchematic.Draw(design, answer, UnitSystem.Si, shape, "25 Nov");
                    var file = $"{name.Replace(' ', '-')}-{shape}{(answered ? "" : "-bare")}.svg";
                    File.WriteAllText(Path.Combine(to, file), sheet.ToSvg(SvgForm.StandAlone));
                }
            }
        }
        for (var seed = 1; seed <= 12; seed++)
        {
            var rolled = RandomCircuits.Plant(seed);
            foreach (var shape in Enum.GetValues<SheetShape>())
            {
                File.WriteAllText(
                    Path.Combine(to, $"r{seed}-{shape}.svg"),
                    PlantSchematic
                        .Draw(rolled, SampleAnswers.Of(rolled), UnitSystem.Si, shape)
                        .ToSvg(SvgForm.StandAlone)
                );
            }
        }

        foreach (var example in Examples.All)
        {
            var answer = Study.Solve(example);
            foreach (var shape in Enum.GetValues<SheetShape>())
            {
                Sheet[] sheets =
                [
                    PlantSchematic.Draw(example, answer, example.Units, shape),
                    PressureLine.Draw(example, answer, example.Units, shape),
                    .. PumpCurve.DrawAll(example, answer, example.Units, shape),
                    SpaceSection.Draw(example, answer, example.Units, shape),
                    FloorSection.Draw(example, answer, example.Units, null, shape),
                    LoopBars.Draw(example, answer, example.Units, shape),
                ];
                foreach (var sheet in sheets)
                {
                    File.WriteAllText(
                        Path.Combine(
                            to,
                            $"x-{example.Name.Replace(' ', '-')}-{sheet.Name}-{shape}.svg"
                        ),
                        sheet.ToSvg(SvgForm.StandAlone)
                    );
                }
            }
        }

        var fresh = DesignFile.Read(DesignFile.New("Fresh start")).Value.Design;
        foreach (var shape in Enum.GetValues<SheetShape>())
        {
            File.WriteAllText(
                Path.Combine(to, $"fresh-{shape}.svg"),
                PlantSchematic
                    .Draw(fresh, Study.Solve(fresh), UnitSystem.Si, shape)
                    .ToSvg(SvgForm.StandAlone)
            );
            File.WriteAllText(
                Path.Combine(to, $"fresh-pressure-{shape}.svg"),
                PressureLine
                    .Draw(fresh, Study.Solve(fresh), UnitSystem.Si, shape)
                    .ToSvg(SvgForm.StandAlone)
            );
        }

        var demo = SamplePlants.Of("primary and secondary");
        var full = SampleAnswers.Of(demo);
        foreach (var shape in Enum.GetValues<SheetShape>())
        {
            foreach (var units in Enum.GetValues<UnitSystem>())
            {
                Sheet[] sheets =
                [
                    PressureLine.Draw(demo, full, units, shape, "25 Nov"),
                    .. PumpCurve.DrawAll(demo, full, units, shape, "25 Nov"),
                    SpaceSection.Draw(demo, full, units, shape, "25 Nov"),
                    FloorSection.Draw(demo, full, units, null, shape, "25 Nov"),
                    LoopBars.Draw(demo, full, units, shape, "25 Nov"),
                ];
                foreach (var sheet in sheets)
                {
                    File.WriteAllText(
                        Path.Combine(to, $"z-{sheet.Name}-{shape}-{units}.svg"),
                        sheet.ToSvg(SvgForm.StandAlone)
                    );
                }
            }
        }
    }
}
