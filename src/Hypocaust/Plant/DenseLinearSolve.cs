namespace Hypocaust.Plant;

/// <summary>Gauss elimination with row exchange for the few dozen temperatures of a plant.</summary>
internal static class DenseLinearSolve
{
    /// <summary>Solves A·x = b; b becomes x, A is used up.</summary>
    /// <exception cref="InvalidOperationException">The matrix is singular: the caller built it wrongly.</exception>
    public static void InPlace(double[,] a, double[] b)
    {
        var n = b.Length;
        for (var k = 0; k < n; k++)
        {
            Exchange(a, b, k, PivotRow(a, k));
            var pivot = a[k, k];
            if (pivot == 0)
            {
                throw new InvalidOperationException("The temperature equations are singular.");
            }

            for (var i = k + 1; i < n; i++)
            {
                var factor = a[i, k] / pivot;
                if (factor == 0)
                {
                    continue;
                }

                for (var j = k + 1; j < n; j++)
                {
                    a[i, j] -= factor * a[k, j];
                }

                b[i] -= factor * b[k];
            }
        }

        for (var i = n - 1; i >= 0; i--)
        {
            for (var j = i + 1; j < n; j++)
            {
                b[i] -= a[i, j] * b[j];
            }

            b[i] /= a[i, i];
        }
    }

    private static int PivotRow(double[,] a, int k)
    {
        var best = k;
        for (var i = k + 1; i < a.GetLength(0); i++)
        {
            if (Math.Abs(a[i, k]) > Math.Abs(a[best, k]))
            {
                best = i;
            }
        }

        return best;
    }

    private static void Exchange(double[,] a, double[] b, int k, int row)
    {
        if (row == k)
        {
            return;
        }

        for (var j = 0; j < b.Length; j++)
        {
            (a[k, j], a[row, j]) = (a[row, j], a[k, j]);
        }

        (b[k], b[row]) = (b[row], b[k]);
    }
}
