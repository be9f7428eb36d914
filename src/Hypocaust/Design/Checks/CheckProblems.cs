using Hypocaust.Problems;

namespace Hypocaust.Design.Checks;

/// <summary>Every message about what a design describes, made by name; the place is filled in by <see cref="CheckReport"/>.</summary>
internal static class CheckProblems
{
    private const int MostListed = 12;

    public static Problem UnknownName(string what, string name, IEnumerable<string> known)
    {
        var names = known.ToList();
        var nearest = Names.Nearest(name, names);
        var remedy =
            nearest is not null ? $"write \"{nearest}\" if that is what you mean"
            : names.Count == 0 ? $"add it: there is no {what} yet"
            : $"use one of {List(names)}, or add it";
        return new(
            "unknown-reference",
            "",
            $"no {what} is called {DesignProblems.Quoted(name)}",
            remedy
        );
    }

    public static Problem NoZone() =>
        new("no-zone", "", "the building has no zone", "add one under \"zones\"");

    public static Problem ConstructionUndefined() =>
        new(
            "undefined",
            "",
            "nothing says how well this construction insulates",
            "write its \"layers\" or its \"u\""
        );

    public static Problem DefinedTwice(string one, string other) =>
        new(
            "defined-twice",
            "",
            $"\"{one}\" and \"{other}\" both stand here and may contradict each other",
            "keep one of them"
        );

    public static Problem LayerUndefined() =>
        new(
            "undefined",
            "",
            "nothing says how well this layer insulates",
            "write \"material\" or \"conductivity\" with \"thickness\", or \"resistance\""
        );

    public static Problem ThicknessMissing(string why) =>
        new("undefined", "", $"the layer has {why} but no thickness", "add \"thickness\"");

    public static Problem BridgeUndefined() =>
        new(
            "undefined",
            "",
            "nothing says what the studs or rafters are made of",
            "write \"material\" or \"conductivity\""
        );

    public static Problem ElementUndefined() =>
        new(
            "undefined",
            "",
            "nothing says how well this element insulates",
            "write \"construction\" or \"u\""
        );

    public static Problem ZoneBesideItself(string zone) =>
        new(
            "own-zone",
            "",
            $"the far side of this element is its own zone {DesignProblems.Quoted(zone)}",
            "name another zone or leave the element out: it loses no heat"
        );

    public static Problem NameTwice(string what, string name) =>
        new(
            "name-twice",
            "",
            $"a second {what} is called {DesignProblems.Quoted(name)}",
            "give it a name of its own"
        );

    public static Problem NotOfKind(string name, string belongs) =>
        new(
            "wrong-part",
            "",
            $"{DesignProblems.Quoted(name)} is not {belongs}",
            $"name {belongs} here"
        );

    public static Problem PipeAsItem(string name) =>
        new(
            "wrong-part",
            "",
            $"{DesignProblems.Quoted(name)} is pipe, and pipe has no place of its own",
            "take the item out and write the pipe into a run (\"1.2 m\")"
        );

    public static Problem WhichManifold(IEnumerable<string> manifolds) =>
        new(
            "which-manifold",
            "",
            "the plant has several manifolds and the loop names none",
            $"add \"manifold\" with one of {List([.. manifolds])}"
        );

    public static Problem TooManyLoops(string manifold, int outlets) =>
        new(
            "too-many-loops",
            "",
            $"the manifold {DesignProblems.Quoted(manifold)} has {outlets} outlets and this loop is one too many",
            "choose a larger manifold or put the loop on another"
        );

    public static Problem SettingDoesNotBelong(string setting, string owner) =>
        new(
            "setting-of-another-part",
            "",
            $"\"{setting}\" means nothing for this part",
            $"take it out; it belongs to {owner}"
        );

    public static Problem SpeedMissing(int speeds) =>
        new(
            "missing",
            "",
            $"the circulator has {speeds} speeds and none is chosen",
            "add \"speed\", 1 being the slowest"
        );

    public static Problem SpeedTooHigh(int speed, int speeds) =>
        new(
            "out-of-bounds",
            "",
            $"the circulator has no speed {speed}",
            speeds == 1 ? "it has one speed: leave \"speed\" out" : $"use 1 to {speeds}"
        );

    public static Problem SetPointMissing() =>
        new(
            "missing",
            "",
            "the heater has no set point",
            "add \"setPoint\" with the water temperature to which it heats, or \"off\": true"
        );

    public static Problem PortTwice(PortAddress port, string first) =>
        new(
            "port-twice",
            "",
            $"the port {port} is already used at {first}",
            "join another port, or put a tee where three pipes meet"
        );

    public static Problem NotPiped() =>
        new(
            "not-piped",
            "",
            "no run passes this item",
            "write it into a run or take it out of the items"
        );

    public static Problem PortOpen(string port) =>
        new(
            "port-open",
            "",
            $"the port \"{port}\" is joined to nothing, so water would run out",
            "join it in a run; a shut-off valve with \"shut\": true may end a pipe"
        );

    public static Problem TooFewPoints() =>
        new(
            "bad-curve",
            "",
            "a pump curve needs three points or more",
            "read more points from the maker's diagram"
        );

    public static Problem FlowNotRising() =>
        new(
            "bad-curve",
            "",
            "the flow does not rise from the point before to this one",
            "write the points in the order of their flow"
        );

    public static Problem HeadNotFalling() =>
        new(
            "bad-curve",
            "",
            "the head does not fall from the point before to this one",
            "check both points: the head of a circulator falls as the flow rises"
        );

    public static Problem NoSpeeds() =>
        new(
            "undefined",
            "",
            "the circulator has no speed",
            "write its curve for one speed or more"
        );

    public static Problem NoWall() =>
        new(
            "out-of-bounds",
            "",
            "the outer diameter is not larger than the inner",
            "check both; the difference is twice the wall"
        );

    private static string List(List<string> names) =>
        string.Join(", ", names.Take(MostListed)) + (names.Count > MostListed ? " …" : "");
}
