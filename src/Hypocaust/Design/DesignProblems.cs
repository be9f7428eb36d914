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

    public static Problem PipeAtEndOfRun(int step, string text) =>
        new(
            "pipe-at-end",
            $"[{step}]",
            $"the run has a piece of pipe (\"{text}\") at its end, leading nowhere",
            "start and end a run with a part"
        );

    public static Problem RunTooShort() =>
        new(
            "run-too-short",
            "",
            "the run joins nothing",
            "name at least two parts, like [\"heater.out\", \"1 m\", \"pump\"]"
        );

    public static Problem NoSuchItemInRun(int step, string item) =>
        new(
            "no-such-item",
            $"[{step}]",
            $"there is no item \"{item}\" in the plant",
            "name one of plant.items, or add it there"
        );

    public static Problem PipeAsItem(int step, string item) =>
        new(
            "pipe-as-item",
            $"[{step}]",
            $"\"{item}\" is a pipe, which cannot stand as an item",
            "write its length instead, like \"1.2 m, 2 elbows\""
        );

    public static Problem NoSuchPort(
        int step,
        string item,
        string port,
        IEnumerable<string> ports
    ) =>
        new(
            "no-such-port",
            $"[{step}]",
            $"\"{item}\" has no port \"{port}\"",
            $"use one of {string.Join(", ", ports)}"
        );

    public static Problem PortNeeded(int step, string item, IEnumerable<string> ports) =>
        new(
            "port-needed",
            $"[{step}]",
            $"\"{item}\" has several ports and stands in the run without one",
            $"end or start the run there and write the port: {string.Join(", ", ports.Select(port => $"{item}.{port}"))}"
        );
}
