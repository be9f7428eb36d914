using System.Collections.Immutable;
using Hypocaust.Problems;

namespace Hypocaust.Conduction;

/// <summary>Steady conduction in a section of rectangles; left and right edges let no heat through.</summary>
/// <remarks>Rows count from the bottom, columns from the left; cell (column, row) has the index row × columns + column.</remarks>
public sealed record ConductionProblem
{
    private ConductionProblem() { }

    /// <summary>Vertical grid lines in m, rising; one more than there are columns.</summary>
    public required ImmutableArray<double> XLinesM { get; init; }

    /// <summary>Horizontal grid lines in m, rising; one more than there are rows.</summary>
    public required ImmutableArray<double> YLinesM { get; init; }

    /// <summary>Conductivity of each cell in W/(m·K), above 0.</summary>
    public required ImmutableArray<double> ConductivitiesWPerMK { get; init; }

    /// <summary>The upper face.</summary>
    public required ConductionFace Top { get; init; }

    /// <summary>The lower face.</summary>
    public required ConductionFace Bottom { get; init; }

    /// <summary>Cells of given temperature.</summary>
    public required ImmutableArray<HeldCell> Held { get; init; }

    /// <summary>Round tubes.</summary>
    public required ImmutableArray<ImmersedTube> Tubes { get; init; }

    /// <summary>Number of columns.</summary>
    public int Columns => XLinesM.Length - 1;

    /// <summary>Number of rows.</summary>
    public int Rows => YLinesM.Length - 1;

    /// <summary>Checks a problem and gives everything that is wrong with it at once.</summary>
    /// <param name="xLinesM">Vertical grid lines in m, rising.</param>
    /// <param name="yLinesM">Horizontal grid lines in m, rising.</param>
    /// <param name="conductivitiesWPerMK">Conductivity of each cell in W/(m·K), above 0, row by row from the bottom.</param>
    /// <param name="top">The upper face.</param>
    /// <param name="bottom">The lower face.</param>
    /// <param name="held">Cells of given temperature; left out, none.</param>
    /// <param name="tubes">Round tubes; left out, none.</param>
    public static Result<ConductionProblem> Create(
        ImmutableArray<double> xLinesM,
        ImmutableArray<double> yLinesM,
        ImmutableArray<double> conductivitiesWPerMK,
        ConductionFace top,
        ConductionFace bottom,
        ImmutableArray<HeldCell> held = default,
        ImmutableArray<ImmersedTube> tubes = default
    )
    {
        var problem = new ConductionProblem
        {
            XLinesM = xLinesM,
            YLinesM = yLinesM,
            ConductivitiesWPerMK = conductivitiesWPerMK,
            Top = top,
            Bottom = bottom,
            Held = held.IsDefault ? [] : held,
            Tubes = tubes.IsDefault ? [] : tubes,
        };
        List<Problem> wrong = [.. ConductionChecks.Of(problem)];
        return wrong.Count > 0 ? Result<ConductionProblem>.Failed(wrong) : problem;
    }
}
