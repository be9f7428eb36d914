namespace Hypocaust.Hydraulics.Friction;

/// <summary>Ranges shared by the friction formulas.</summary>
internal static class FrictionArguments
{
    public static void Check(double reynolds, double relativeRoughness)
    {
        if (!(double.IsFinite(reynolds) && reynolds > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(reynolds), reynolds, "More than 0.");
        }

        if (!(relativeRoughness is >= 0 and <= 0.05))
        {
            throw new ArgumentOutOfRangeException(
                nameof(relativeRoughness),
                relativeRoughness,
                "0 to 0.05."
            );
        }
    }
}
