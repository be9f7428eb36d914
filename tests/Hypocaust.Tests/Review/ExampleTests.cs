using System.Collections;
using System.Reflection;
using Hypocaust.Answers;
using Hypocaust.Design;

namespace Hypocaust.Tests.Review;

/// <summary>The example designs: whole scenarios that must stay what they are for.</summary>
public sealed class ExampleTests
{
    private static readonly string[] PlantedInWorkshop =
    [
        "relief-valve-above-weakest-part",
        "relief-valve-can-be-cut-off",
        "fluid-freezes",
        "expansion-vessel-too-small",
        "circulator-pumps-towards-vessel",
        "tube-lets-oxygen-in",
        "insulation-below-too-thin",
        "tube-cover-too-thin",
        "loop-too-long",
        "circulator-cannot-be-isolated",
        "pressure-gauge-missing",
        "thermometers-missing",
    ];

    public static TheoryData<string> All => [.. Examples.All()];

    [Fact]
    public void There_are_examples() => Examples.All().Count().ShouldBeGreaterThanOrEqualTo(3);

    [Theory]
    [MemberData(nameof(All))]
    public void An_example_is_answered_whole(string name)
    {
        var answer = Solve(Examples.Named(name));
        answer.Problems.Select(problem => problem.ToString()).ShouldBeEmpty();
        answer.Space.ShouldNotBeNull();
        answer.Floor.ShouldNotBeNull();
        answer.Plant.ShouldNotBeNull().Convergence.Converged.ShouldBeTrue();
        answer.Review.NotAsked.ShouldBeEmpty();
    }

    // first law: what the heaters give leaves by the floor, upwards and downwards, and by the pipes
    [Theory]
    [MemberData(nameof(All))]
    public void Heat_in_an_example_closes(string name)
    {
        var answer = Solve(Examples.Named(name));
        var given = answer.Plant!.Heaters.Sum(heater => heater.DeliveredW);
        var taken = answer.Floor!.OutputW + answer.Floor.DownW + answer.Plant.PipeLossW;
        given.ShouldBeGreaterThan(1000);
        (Math.Abs(given - taken!.Value) / given).ShouldBeLessThan(1e-6);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void No_number_of_an_example_is_without_value(string name) =>
        NotFinite(Solve(Examples.Named(name)), "answer").ShouldBeEmpty();

    [Theory]
    [InlineData("pottery-studio")]
    [InlineData("ridge-cabin")]
    public void A_sound_example_raises_nothing_above_a_note(string name)
    {
        var answer = Solve(Examples.Named(name));
        answer
            .Review.Findings.Where(finding => finding.Severity < Severity.Note)
            .Select(finding => $"{finding.Rule}: {finding.What}")
            .ShouldBeEmpty();
        answer.Floor!.Holds.ShouldBe(true);
    }

    [Fact]
    public void A_new_design_raises_nothing_above_a_note() =>
        Study
            .Solve(DesignFile.Read(DesignFile.New("new")).Value.Design)
            .Review.Findings.Where(finding => finding.Severity < Severity.Note)
            .Select(finding => $"{finding.Rule}: {finding.What}")
            .ShouldBeEmpty();

    [Fact]
    public void Review_finds_the_twelve_planted_faults_and_nothing_else() =>
        Solve(Examples.Workshop())
            .Review.Findings.Where(finding => finding.Severity < Severity.Note)
            .Select(finding => finding.Rule)
            .ShouldBe(PlantedInWorkshop, ignoreOrder: true);

    // common practice for floor loops of this size: 1.5 to 2.5 L/min each
    [Fact]
    public void The_studio_runs_as_a_fitter_would_expect()
    {
        var answer = Solve(Examples.Studio());
        foreach (var loop in answer.Floor!.Loops)
        {
            (loop.Running!.FlowM3PerS * 60_000).ShouldBeInRange(1.5, 2.5);
            loop.Running.SurfaceWarmestC.ShouldBeLessThan(29);
        }

        var heater = answer.Plant!.Heater.ShouldNotBeNull();
        heater.FlowM3PerS.ShouldBeGreaterThan(2 * heater.MinimumFlowM3PerS);
        var tees = answer.Plant.Tees.ShouldHaveSingleItem();
        tees.PrimaryFlowM3PerS.ShouldBeGreaterThan(tees.SecondaryFlowM3PerS);
    }

    private static Answer Solve(DesignEdits design) => Study.Solve(design.Read().Design);

    private static IEnumerable<string> NotFinite(object? value, string path)
    {
        switch (value)
        {
            case null or string or Enum:
                return [];
            case double number:
                return double.IsFinite(number) ? [] : [path];
            case IEnumerable list:
                return list.Cast<object?>()
                    .SelectMany((item, i) => NotFinite(item, $"{path}[{i}]"));
            default:
                var type = value.GetType();
                return type.Namespace?.StartsWith("Hypocaust", StringComparison.Ordinal) == true
                    ? type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
                        .SelectMany(property =>
                            NotFinite(property.GetValue(value), $"{path}.{property.Name}")
                        )
                    : [];
        }
    }
}
