using Hypocaust.Problems;

namespace Hypocaust.Design;

/// <summary>Every message of this module, made by name.</summary>
internal static class DesignProblems
{
    public static Problem NotAStep(string text) =>
        new(
            "not-a-step",
            "",
            $"\"{text}\" is neither a part nor a piece of pipe",
            "write a part (\"pump\", \"heater.out\") or a length (\"1.2 m, 2 elbows, 1 tee\")"
        );

    public static Problem NegativePipe(string text) =>
        new(
            "out-of-bounds",
            "",
            $"\"{text}\" is a negative length",
            "write the length of the pipe as you measure it"
        );
}
