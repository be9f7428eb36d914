using System.Globalization;
using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Quantities;
using Hypocaust.Why;

namespace Hypocaust.Tests.Studies;

public sealed class StudyPropertyTests
{
    private const int Designs = 400;

    // Seeded: the same designs on every machine.
    [Fact]
    public void A_random_valid_design_never_throws_never_yields_NaN_and_closes_mass_and_heat()
    {
        var random = new Random(20261125);
        var solved = 0;
        var worstEnergy = 0.0;
        for (var i = 0; i < Designs; i++)
        {
            var document = Shaken(
                Examples.Document(Examples.Names[i % Examples.Names.Count]),
                random
            );
            var answer = Study.Solve(document.Design);
            AnswerPath
                .Numbers(answer)
                .Where(number => !double.IsFinite(number.Value))
                .Select(number => number.Path)
                .ShouldBeEmpty($"design {i}");
            if (answer.Plant is { Convergence.Converged: true } plant)
            {
                solved++;
                plant.Convergence.MassResidual.ShouldBeLessThan(1e-8, $"design {i}");
                plant.Convergence.EnergyResidual.ShouldBeLessThan(1e-8, $"design {i}");
                worstEnergy = Math.Max(worstEnergy, Imbalance(answer));
            }
            else
            {
                (
                    answer.Problems.Length > 0 || answer.Plant is { Convergence.Status.Length: > 0 }
                ).ShouldBeTrue();
            }
        }

        solved.ShouldBeGreaterThan(Designs / 2);
        worstEnergy.ShouldBeLessThan(1e-6);
    }

    [Fact]
    public void A_heater_that_is_off_needs_no_set_point_and_gives_nothing()
    {
        var document = Examples.Document("new").Edit("$.plant.items.heater.off", "true").Value;
        var answer = Study.Solve(document.Edit("$.plant.items.heater.setPoint", null).Value.Design);
        answer.Plant!.Heater!.State.ShouldBe(HeaterState.Off);
        answer.Plant.Heater.SetPointC.ShouldBeNull();
        answer.Plant.Heater.DeliveredW.ShouldBe(0, 1e-6);
    }

    [Fact]
    public void A_problem_names_a_place_that_stands_in_the_file_and_comes_once()
    {
        var text = Examples
            .Document("new")
            .Text.Replace("\"room\"", "\"back room\"", StringComparison.Ordinal);
        var document = DesignFile
            .Read(text)
            .Value.Edit("$.building.zones['back room'].ground", null)
            .Value;
        var problem = Study.Solve(document.Design).Problems.ShouldHaveSingleItem();
        problem.Code.ShouldBe("nothing-known-below");
        document.Places.ShouldContainKey(problem.Place);
    }

    [Fact]
    public void More_insulation_never_loses_more_and_a_colder_day_never_less()
    {
        var document = Examples.Document("pottery-studio");
        var before = Study.Solve(document.Design).Space!.DesignLossW;
        foreach (
            var placed in DesignQuantities
                .Of(document.Design)
                .Where(placed => placed.Value.Kind == TransmittanceKind.Kind)
        )
        {
            var better = document.Edit(
                placed.Path,
                QuantityText.Exact(placed.Value.Si * 0.8, placed.Value.Kind.Si)
            );
            if (better.Succeeded)
            {
                Study
                    .Solve(better.Value.Design)
                    .Space!.DesignLossW.ShouldBeLessThanOrEqualTo(before, placed.Path);
            }
        }

        var colder = document.Edit("$.site.designOutdoor", "-20 °C").Value;
        Study.Solve(colder.Design).Space!.DesignLossW.ShouldBeGreaterThan(before);
    }

    [Fact]
    public void Units_of_writing_do_not_change_the_answer()
    {
        var document = Examples.Document("new");
        var before = Study.Solve(document.Design);
        var rewritten = DesignQuantities
            .Of(document.Design)
            .Where(placed => !placed.Value.IsAssumed && placed.Value.Kind.Units.Length > 1)
            .Aggregate(
                document,
                (so, placed) =>
                {
                    var unit = placed.Value.Kind.Units[^1];
                    return so.Edit(placed.Path, QuantityText.Exact(placed.Value.Si, unit))
                        .TryGet(out var edited)
                        ? edited
                        : so;
                }
            );
        rewritten.Text.ShouldNotBe(document.Text);
        var after = Study.Solve(rewritten.Design);
        after.Floor!.OutputW!.Value.ShouldBe(before.Floor!.OutputW!.Value, 1e-6);
        after.Space!.DesignLossW.ShouldBe(before.Space!.DesignLossW, 1e-6);
        after.Plant!.Fill.VolumeM3.ShouldBe(before.Plant!.Fill.VolumeM3, 1e-12);
    }

    [Fact]
    public void Twice_the_building_loses_twice_as_much()
    {
        var document = Examples.Document("new");
        var doubled = DesignQuantities
            .Of(document.Design)
            .Where(placed =>
                placed.Path.StartsWith("$.building", StringComparison.Ordinal)
                && (
                    placed.Value.Kind == AreaKind.Kind
                    || placed.Value.Kind == VolumeKind.Kind
                    || placed.Path.EndsWith("exposedPerimeter", StringComparison.Ordinal)
                )
            )
            .Aggregate(
                document,
                (so, placed) =>
                    so.Edit(
                        placed.Path,
                        QuantityText.Exact(2 * placed.Value.Si, placed.Value.Kind.Si)
                    ).Value
            );
        var before = Study.Solve(document.Design).Space!.DesignLossW;
        Study.Solve(doubled.Design).Space!.DesignLossW.ShouldBe(2 * before, 1e-9 * before);
    }

    // heater = floor up + floor down + pipes, as a share of the heater
    private static double Imbalance(Answer answer)
    {
        var delivered = answer.Plant!.Heaters.Sum(heater => heater.DeliveredW);
        var used =
            (answer.Floor?.OutputW ?? 0) + (answer.Floor?.DownW ?? 0) + answer.Plant.PipeLossW;
        return Math.Abs(delivered - used) / Math.Max(100, Math.Abs(delivered));
    }

    private static DesignDocument Shaken(DesignDocument document, Random random)
    {
        var quantities = DesignQuantities.Of(document.Design).ToList();
        for (var edit = 0; edit < 8; edit++)
        {
            var placed = quantities[random.Next(quantities.Count)];
            var factor = Math.Exp((random.NextDouble() - 0.5) * 3);
            var si =
                placed.Value.Kind == TemperatureKind.Kind
                    ? placed.Value.Si + ((random.NextDouble() - 0.5) * 30)
                    : placed.Value.Si * factor;
            document = Try(document, placed.Path, QuantityText.Exact(si, placed.Value.Kind.Si));
        }

        foreach (var (item, placed) in document.Design.Plant!.Items)
        {
            var path = $"$.plant.items['{item}']";
            document = random.Next(12) switch
            {
                0 => Try(Try(document, path + ".off", "true"), path + ".setPoint", null),
                1 => Try(document, path + ".shut", "true"),
                2 when placed.Speed is not null => Try(
                    document,
                    path + ".speed",
                    random.Next(1, 4).ToString(CultureInfo.InvariantCulture)
                ),
                _ => document,
            };
        }

        return random.Next(4) == 0
            ? Try(document, $"$.floor.loops[{random.Next(3)}].shut", "true")
            : document;
    }

    private static DesignDocument Try(DesignDocument document, string path, string? text) =>
        document.Edit(path, text).TryGet(out var edited) ? edited : document;
}
