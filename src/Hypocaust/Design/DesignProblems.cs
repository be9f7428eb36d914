using System.Globalization;
using Hypocaust.Design.Shapes;
using Hypocaust.Design.Source;
using Hypocaust.Problems;
using Hypocaust.Quantities;

namespace Hypocaust.Design;

/// <summary>Every message about the text of a design file, made by name. Whoever knows the place fills it in.</summary>
internal static class DesignProblems
{
    /// <summary>Code of <see cref="NoSuchItemInRun"/>.</summary>
    public const string NoSuchItemCode = "no-such-item";

    /// <summary>Code of <see cref="PipeAsItem"/>.</summary>
    public const string PipeAsItemCode = "pipe-as-item";

    private const string Whole = "$";

    public static Problem NotAStep(string text) =>
        new(
            "not-a-step",
            "",
            $"{Quoted(text)} is neither a part nor a piece of pipe",
            "write a part (\"pump\", \"heater.out\") or a length (\"1.2 m, 2 elbows, 1 tee\")"
        );

    public static Problem PipeOutOfBounds(string text, double longestM) =>
        new(
            "out-of-bounds",
            "",
            $"{Quoted(text)} is no length that a pipe can have",
            $"write the length of the pipe as you measure it, 0 m to {longestM} m"
        );

    public static Problem PipeAtEndOfRun(int step, string text) =>
        new(
            "pipe-at-end",
            $"[{step}]",
            $"the run starts or ends with pipe ({Quoted(text)}) that leads nowhere",
            "write the part to which it leads"
        );

    public static Problem RunTooShort() =>
        new(
            "run-too-short",
            "",
            "a run needs two parts or more",
            "write at least where it comes from and where it goes (\"heater.out\", \"pump\")"
        );

    public static Problem NoSuchItemInRun(int step, string item) =>
        new(
            NoSuchItemCode,
            $"[{step}]",
            $"no item is called {Quoted(item)}",
            "add it to plant.items or write the name of one that is there"
        );

    public static Problem PipeAsItem(int step, string item) =>
        new(
            PipeAsItemCode,
            $"[{step}]",
            $"{Quoted(item)} is a pipe, and a pipe is not a part in its place",
            "write its length in the run (\"1.2 m\") and its name as the run's \"pipe\""
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
            $"{Quoted(item)} has no port {Quoted(port)}",
            Suggest(Names.Nearest(port, ports), ports)
        );

    public static Problem PortNeeded(int step, string item, IReadOnlyList<string> ports) =>
        new(
            "port-needed",
            $"[{step}]",
            $"{Quoted(item)} has several ports ({string.Join(", ", ports)}), so a run can only start or end there, with one of them",
            $"write \"{item}.{ports[0]}\" or another as the first or last step; what comes after it goes into a run of its own"
        );

    public static Problem TooLarge(long? bytes) =>
        new(
            "too-large",
            Whole,
            bytes is { } size
                ? $"the file has {Megabytes(size)} MB, far more than a design"
                : "the file is far larger than a design",
            $"open a design file (at most {Megabytes(SourceText.LargestFile)} MB)"
        )
        {
            Position = new TextPosition(1, 1),
        };

    public static Problem NotUtf8(TextPosition position) =>
        new(
            "not-utf8",
            Whole,
            "the file has bytes that are not UTF-8 text",
            "save it again as UTF-8 in your editor"
        )
        {
            Position = position,
        };

    public static Problem TooDeep(TextPosition position) =>
        new(
            "too-deep",
            Whole,
            $"brackets are nested more than {SourceReader.DeepestNesting} deep",
            "a design needs about ten levels; look for a bracket that is never closed"
        )
        {
            Position = position,
        };

    public static Problem BadEscape(TextPosition position) =>
        new(
            "bad-escape",
            Whole,
            "this text has half of a two-part character code (\\ud800 to \\udfff)",
            "write the character itself"
        )
        {
            Position = position,
        };

    public static Problem Comment(TextPosition position) =>
        new("comment", Whole, "a comment does not belong in this file", "use a \"note\" instead")
        {
            Position = position,
        };

    public static Problem TrailingComma(TextPosition position) =>
        new("trailing-comma", Whole, "a comma stands before a closing bracket", "take it out")
        {
            Position = position,
        };

    public static Problem AndMore(int count) =>
        new(
            "more-problems",
            Whole,
            $"{count} more {(count == 1 ? "problem is" : "problems are")} not listed",
            "mend these first"
        );

    public static Problem DuplicateKey(string name, TextPosition first) =>
        new(
            "duplicate-key",
            "",
            $"{Quoted(name)} stands here a second time",
            $"keep this one or the one of line {first.Line}"
        );

    public static Problem WrongType(SourceNode node, string belongs, string example) =>
        new(
            "wrong-type",
            "",
            $"{node.Described} stands where {belongs} belongs",
            $"write it like {example}"
        );

    public static Problem NumberWithoutUnit(string number, QuantityKind kind) =>
        new(
            "no-unit",
            "",
            $"{Short(number)} is a number without a unit",
            $"write \"{Short(number)} {CommonUnit(kind)}\" or another {kind.Name} in quotes (units: {kind.UnitList})"
        );

    public static Problem NullValue(string name, bool isRequired, string belongs) =>
        new(
            "null-value",
            "",
            "null says nothing",
            isRequired ? $"write {belongs}" : $"leave \"{name}\" out"
        );

    public static Problem OutOfBounds(string value, string low, string high) =>
        new(
            "out-of-bounds",
            "",
            $"{value} is outside what makes sense here",
            low == high ? $"it must be {low}" : $"it must be between {low} and {high}"
        );

    public static Problem BadChoice(string text, IReadOnlyCollection<string> choices) =>
        new(
            "bad-choice",
            "",
            $"{Quoted(text)} is not among the choices",
            Suggest(Names.Nearest(text, choices), choices)
        );

    public static Problem BadName(string name) =>
        new(
            "bad-name",
            "",
            $"{Quoted(name)} cannot be a name",
            $"start with a letter and use letters, digits, blanks and - _ / only, at most {Names.LongestName} characters"
        );

    public static Problem UnknownKey(string name, string? nearest, IEnumerable<string> known) =>
        new("unknown-key", "", $"{Quoted(name)} means nothing here", Suggest(nearest, known));

    public static Problem Missing(PropertyShape property) =>
        new(
            "missing",
            "",
            $"\"{property.Name}\" is missing{(property.Meaning.Length > 0 ? $" ({property.Meaning.TrimEnd('.')})" : "")}",
            $"add \"{property.Name}\": {property.Shape.Example}"
        );

    public static Problem MissingKind(IEnumerable<string> kinds) =>
        new(
            "missing",
            "",
            "\"kind\" is missing: nobody can tell what part this is",
            $"add \"kind\" with one of {string.Join(", ", kinds)}"
        );

    public static Problem UnknownKind(string kind, IEnumerable<string> kinds) =>
        new(
            "unknown-kind",
            "",
            $"{Quoted(kind)} is no kind of part",
            Suggest(Names.Nearest(kind, kinds), kinds)
        );

    public static Problem NoSuchPlace(string path, string remedy) =>
        new("no-such-place", path, "there is no such place in this design", remedy);

    public static Problem NotALeaf(string path) =>
        new(
            "not-a-leaf",
            path,
            "a whole object or list stands here",
            "edit one of the values inside it"
        );

    public static string Suggest(string? nearest, IEnumerable<string> known) =>
        nearest is not null
            ? $"write \"{nearest}\" if that is what you mean"
            : $"use one of {string.Join(", ", known.Take(20))}";

    public static string Quoted(string text) => $"\"{Short(text)}\"";

    public static string Short(string text) => text.Length > 40 ? text[..40] + "…" : text;

    // The unit of the example is the one in which most people think; "R-20" and "Kv 1.6" begin with theirs
    private static string CommonUnit(QuantityKind kind) =>
        char.IsAsciiLetter(kind.Example[0])
            ? kind.Si.Symbol
            : QuantityText.UnitWritten(kind.Example, kind).Symbol;

    private static string Megabytes(long bytes) =>
        (bytes / 1048576.0).ToString("0.#", CultureInfo.InvariantCulture);
}
