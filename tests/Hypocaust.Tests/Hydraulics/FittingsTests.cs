using Hypocaust.Hydraulics;
using Hypocaust.Tests.Reference;

namespace Hypocaust.Tests.Hydraulics;

/// <summary>Against valve_loss.csv: IEC 60534 definitions, computed beside.</summary>
public sealed class FittingsTests
{
    private static readonly IReadOnlyList<ReferenceCsv.Case> Cases = ReferenceCsv.Cases(
        "valve_loss.csv"
    );

    public static TheoryData<string> Names => [.. Cases.Select(worked => worked.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Losses_equal_the_worked_case(string name)
    {
        var worked = Cases.Single(found => found.Name == name);
        switch (name[..2])
        {
            case "kv":
                Hold(
                    worked,
                    "drop",
                    Fittings.LossOfKvPa(
                        worked.Input("Kv"),
                        worked.Input("flow") / 60000,
                        worked.Input("density")
                    )
                );
                break;
            case "k-":
                var velocity = Fittings.VelocityMPerS(
                    worked.Input("flow") / 60000,
                    worked.Input("diameter")
                );
                Hold(worked, "velocity", velocity);
                Hold(
                    worked,
                    "drop",
                    Fittings.LossOfKPa(worked.Input("K"), velocity, worked.Input("density"))
                );
                Hold(
                    worked,
                    "equivalent_Kv",
                    Fittings.KvOfK(worked.Input("K"), worked.Input("diameter"))
                );
                break;
            case "cv":
                const double gallonPerMinute = 3.785411784e-3 / 60;
                Hold(
                    worked,
                    "drop_Pa",
                    Fittings.LossOfKvPa(
                        Fittings.KvOfCv(worked.Input("Cv")),
                        worked.Input("flow") * gallonPerMinute,
                        1000 * worked.Input("specific_gravity")
                    )
                );
                break;
            default:
                throw new InvalidOperationException($"No check for case {name}.");
        }
    }

    [Fact]
    public void Kv_and_Cv_differ_by_the_factor_in_every_valve_catalogue() =>
        // 1 Cv = 0.865 Kv, common practice (IEC 60534-1: 0.865)
        Fittings.KvOfCv(1).ShouldBe(0.865, 0.0005);

    [Fact]
    public void Conversions_undo_each_other()
    {
        Fittings.KOfKv(Fittings.KvOfK(3.7, 0.02), 0.02).ShouldBe(3.7, 1e-12);
        Fittings.CvOfKv(Fittings.KvOfCv(2.5)).ShouldBe(2.5, 1e-12);
    }

    [Fact]
    public void A_valve_without_opening_is_refused() =>
        Should.Throw<ArgumentOutOfRangeException>(() => Fittings.LossOfKvPa(0, 1e-4, 1000));

    private static void Hold(ReferenceCsv.Case worked, string name, double value) =>
        value.ShouldBe(worked.Expected[name].Number, worked.Expected[name].Absolute, name);
}
