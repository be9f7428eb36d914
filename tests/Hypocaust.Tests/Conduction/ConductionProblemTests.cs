using System.Collections.Immutable;
using Hypocaust.Conduction;

namespace Hypocaust.Tests.Conduction;

public sealed class ConductionProblemTests
{
    private static readonly ImmutableArray<double> Lines = [0, 0.1, 0.3];
    private static readonly ImmutableArray<double> Stuff = [1, 1, 1, 1];
    private static readonly ConductionFace Face = ConductionFace.Uniform(20, 0.1, 2);

    private static void Refused(
        string code,
        ImmutableArray<double>? x = null,
        ImmutableArray<double>? conductivities = null,
        ConductionFace? face = null,
        HeldCell? held = null,
        ImmersedTube? tube = null
    ) =>
        ConductionProblem
            .Create(
                x ?? Lines,
                Lines,
                conductivities ?? Stuff,
                face ?? Face,
                face ?? Face,
                held is { } cell ? [cell] : [],
                tube is null ? [] : [tube]
            )
            .Problems.Single()
            .Code.ShouldBe(code);

    [Fact]
    public void What_cannot_be_solved_is_refused_by_name()
    {
        Refused("conduction-lines", x: [0, 0.1, 0.1]);
        Refused("conduction-lines", x: [0]);
        Refused("conduction-lines", x: [0, double.NaN, 1]);
        Refused("conduction-conductivity", conductivities: [1, 1, 1]);
        Refused("conduction-conductivity", conductivities: [1, 1, 1, 0]);
        Refused("conduction-conductivity", conductivities: [1, 1, double.NaN, 1]);
        Refused("conduction-face", face: ConductionFace.Uniform(20, 0.1, 3));
        Refused("conduction-face", face: ConductionFace.Uniform(20, -0.1, 2));
        Refused("conduction-face", face: ConductionFace.Uniform(double.NaN, 0.1, 2));
        Refused("conduction-no-temperature", face: ConductionFace.Adiabatic(2));
        Refused("conduction-held-cell", held: new HeldCell(2, 0, 40));
        Refused("conduction-held-cell", held: new HeldCell(0, 0, double.NaN));
        Refused("conduction-tube", tube: new ImmersedTube(0, 0, -1, 0, 40));
        Refused("conduction-tube", tube: new ImmersedTube(0, 0, 0.01, double.NaN, 40));
    }

    [Fact]
    public void Every_status_has_its_sentence() =>
        Enum.GetValues<ConductionStatus>()
            .Select(status => status.Sentence())
            .ShouldAllBe(sentence => sentence.EndsWith('.'));
}
