using Hypocaust.Problems;

namespace Hypocaust.Conduction;

/// <summary>What makes a problem one that can be solved.</summary>
internal static class ConductionChecks
{
    // beyond this the arrays of a solve would take gigabytes
    private const int MostCells = 20_000_000;

    public static IEnumerable<Problem> Of(ConductionProblem problem)
    {
        if (!Rise(problem.XLinesM.AsSpan()) || !Rise(problem.YLinesM.AsSpan()))
        {
            yield return ConductionProblems.LinesDoNotRise();
            yield break;
        }

        var (columns, rows) = (problem.Columns, problem.Rows);
        if ((long)columns * rows > MostCells)
        {
            yield return ConductionProblems.TooManyCells(MostCells);
            yield break;
        }

        if (
            problem.ConductivitiesWPerMK.Length != columns * rows
            || problem.ConductivitiesWPerMK.AsSpan().ContainsAnyExceptInRange(1e-6, 1e6)
        )
        {
            yield return ConductionProblems.Conductivities(columns * rows);
        }

        if (!Fits(problem.Top, columns) || !Fits(problem.Bottom, columns))
        {
            yield return ConductionProblems.Face(columns);
        }

        if (problem.Held.Any(cell => !IsInside(cell, columns, rows)))
        {
            yield return ConductionProblems.HeldCell();
        }

        if (problem.Tubes.Any(tube => !IsSound(tube)))
        {
            yield return ConductionProblems.Tube();
        }

        if (
            problem.Held.IsEmpty
            && problem.Tubes.IsEmpty
            && problem
                .Top.ResistancesM2KPerW.Concat(problem.Bottom.ResistancesM2KPerW)
                .All(double.IsPositiveInfinity)
        )
        {
            yield return ConductionProblems.NothingHoldsATemperature();
        }
    }

    private static bool Rise(ReadOnlySpan<double> lines)
    {
        for (var i = 1; i < lines.Length; i++)
        {
            if (!(lines[i] > lines[i - 1]))
            {
                return false;
            }
        }

        return lines.Length > 1 && double.IsFinite(lines[0]) && double.IsFinite(lines[^1]);
    }

    private static bool Fits(ConductionFace face, int columns) =>
        double.IsFinite(face.TemperatureC)
        && face.ResistancesM2KPerW.Length == columns
        && face.ResistancesM2KPerW.All(resistance => resistance >= 0);

    private static bool IsInside(HeldCell cell, int columns, int rows) =>
        cell.Column >= 0
        && cell.Column < columns
        && cell.Row >= 0
        && cell.Row < rows
        && double.IsFinite(cell.TemperatureC);

    private static bool IsSound(ImmersedTube tube) =>
        double.IsFinite(tube.XM + tube.YM + tube.TemperatureC)
        && tube.RadiusM > 0
        && double.IsFinite(tube.RadiusM)
        && tube.SurfaceResistanceM2KPerW >= 0
        && double.IsFinite(tube.SurfaceResistanceM2KPerW);
}
