using Hypocaust.Design;
using Hypocaust.Design.Source;

namespace Hypocaust.Tests.Design;

public sealed class NamesTests
{
    [Theory]
    [InlineData("pump", true)]
    [InlineData("copper 3/4", true)]
    [InlineData("Werkstatt Süd", true)]
    [InlineData("relief 2.5 bar", true)]
    [InlineData("pump.out", false)]
    [InlineData("v2.", false)]
    [InlineData("2nd", false)]
    [InlineData(" pump", false)]
    [InlineData("pump ", false)]
    [InlineData("", false)]
    [InlineData("it's", false)]
    public void A_name_is_recognised(string text, bool isName) =>
        Names.IsName(text).ShouldBe(isName);

    [Theory]
    [InlineData("spacng", "spacing")]
    [InlineData("SPACING", "spacing")]
    [InlineData("spaicng", "spacing")]
    [InlineData("wall", null)]
    public void The_nearest_name_is_found_if_it_is_near(string text, string? nearest) =>
        Names.Nearest(text, ["section", "spacing", "tube", "name"]).ShouldBe(nearest);

    [Theory]
    [InlineData("heater.out", "heater", "out")]
    [InlineData("pump", "pump", null)]
    [InlineData("relief 2.5 bar", "relief 2.5 bar", null)]
    [InlineData("manifold 2.supply", "manifold 2", "supply")]
    public void A_step_is_an_item_and_its_port(string text, string item, string? port)
    {
        var step = RunStep.Read(text).Value;
        step.Item.ShouldBe(item);
        step.Port.ShouldBe(port);
    }

    [Theory]
    [InlineData("$")]
    [InlineData("$.floor.loops[2].spacing")]
    [InlineData("$.parts['copper 3/4'].inner")]
    [InlineData("$['it\\'s']")]
    [InlineData("$['a.b'][0]['[1]']")]
    public void A_path_reads_as_it_is_written(string path) =>
        Place.Parse(path)!.ToString().ShouldBe(path);

    [Theory]
    [InlineData("")]
    [InlineData("floor")]
    [InlineData("$.")]
    [InlineData("$[x]")]
    [InlineData("$['a")]
    [InlineData("$[1")]
    [InlineData("$[-1]")]
    [InlineData("$ .a")]
    public void What_is_no_path_is_refused(string path) => Place.Parse(path).ShouldBeNull();
}
