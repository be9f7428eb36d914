using Hypocaust.Quantities;

namespace Hypocaust.Web.Figures;

/// <summary>How a change of a number is shown: small changes need more digits than the number itself.</summary>
internal static class Change
{
    private const int MostDecimals = 6;

    /// <summary>Units of the number, with decimals enough for two figures of the change.</summary>
    public static Shown Of(Shown shown, double changeSi)
    {
        // A change of a temperature is a difference: it has no zero point to be shifted
        var form = ReferenceEquals(shown, Shown.Temperature) ? Shown.Difference : shown;
        return form with
        {
            SiDecimals = Decimals(form.Si, form.SiDecimals, changeSi),
            UsDecimals = Decimals(form.Us, form.UsDecimals, changeSi),
        };
    }

    private static int Decimals(Unit unit, int least, double changeSi)
    {
        var size = Math.Abs(unit.FromSi(changeSi));
        return size == 0
            ? least
            : Math.Clamp(1 - (int)Math.Floor(Math.Log10(size)), least, MostDecimals);
    }
}
