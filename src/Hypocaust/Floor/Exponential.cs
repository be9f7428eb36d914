namespace Hypocaust.Floor;

internal static class Exponential
{
    /// <summary>e^x − 1 without loss of digits near 0.</summary>
    /// <source>Kahan's identity: (u − 1) x/ln u with u = e^x, exact to a few units in the last place</source>
    public static double MinusOne(double x)
    {
        if (Math.Abs(x) > 0.5)
        {
            return Math.Exp(x) - 1;
        }

        var u = Math.Exp(x);
        return u == 1 ? x : (u - 1) * x / Math.Log(u);
    }
}
