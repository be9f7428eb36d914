using Hypocaust.Papers.Drawing;
using Hypocaust.Papers.Piping;
using Hypocaust.Papers.Tests.Plants;
using Hypocaust.Quantities;

namespace Hypocaust.Papers.Tests;

public sealed class Rendering
{
    [Fact]
    public void Write_all()
    {
        var to = Environment.GetEnvironmentVariable("HYPOCAUST_DRAWINGS");
        if (string.IsNullOrEmpty(to))
        {
            return;
        }

        Directory.CreateDirectory(to);
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
    }
}
