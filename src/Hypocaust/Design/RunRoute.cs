using System.Collections.Immutable;
using Hypocaust.Problems;

namespace Hypocaust.Design;

/// <summary>One end of a join.</summary>
/// <param name="Item">Name of the item.</param>
/// <param name="Port">Name of its port.</param>
public readonly record struct PortAddress(string Item, string Port)
{
    /// <summary>As written in a run.</summary>
    public override string ToString() => $"{Item}.{Port}";
}

/// <summary>A join of two ports, directly or by pipe.</summary>
/// <param name="From">Where the run comes from.</param>
/// <param name="To">Where it goes.</param>
/// <param name="LengthM">Pipe between, m; 0 for a direct join.</param>
/// <param name="Elbows">Elbows in it.</param>
/// <param name="Tees">Tees passed straight in it.</param>
/// <param name="Run">Which run of the plant it belongs to.</param>
/// <param name="Step">Which step of that run ends it.</param>
public sealed record Join(
    PortAddress From,
    PortAddress To,
    double LengthM,
    int Elbows,
    int Tees,
    int Run,
    int Step
)
{
    /// <summary>Whether the ports are joined without pipe between.</summary>
    public bool IsDirect => LengthM == 0 && Elbows == 0 && Tees == 0;
}

/// <summary>Reads a compact run as joins from port to port.</summary>
/// <remarks>
/// A part with one way through is entered at <c>in</c> and left at <c>out</c>; with a port written, the run enters there and leaves by the other.
/// A part on a tee (vessel, relief, thermometer …) in the middle of a run is passed by. A plain tee in the middle is entered at <c>a</c> and left at <c>b</c>;
/// a tee's <c>c</c> and other parts with several ports stand at the ends of runs, with their port.
/// </remarks>
public static class RunRoute
{
    /// <summary>The joins of one run.</summary>
    /// <param name="run">The run.</param>
    /// <param name="index">Which run of the plant it is.</param>
    /// <param name="partOf">The part of an item, or null where there is none.</param>
    /// <returns>The joins, or every step that does not fit, its place being the step's index (<c>[3]</c>).</returns>
    public static Result<ImmutableArray<Join>> Read(
        PipeRun run,
        int index,
        Func<string, Part?> partOf
    )
    {
        var problems = new List<Problem>();
        var joins = ImmutableArray.CreateBuilder<Join>();
        PortAddress? last = null;
        var (length, elbows, tees) = (0.0, 0, 0);
        for (var i = 0; i < run.Run.Length; i++)
        {
            var step = run.Run[i];
            if (step.IsPipe)
            {
                if (i == 0 || i == run.Run.Length - 1)
                {
                    problems.Add(DesignProblems.PipeAtEndOfRun(i, step.Text));
                }

                (length, elbows, tees) = (
                    length + step.Length.Si,
                    elbows + step.Elbows,
                    tees + step.Tees
                );
                continue;
            }

            var place = Place(step, i, First(run, i), Last(run, i), partOf);
            if (!place.TryGet(out var ports))
            {
                problems.AddRange(place.Problems);
                last = null;
            }
            else
            {
                if (last is { } from)
                {
                    joins.Add(new Join(from, ports.Enter, length, elbows, tees, index, i));
                }

                last = ports.Leave;
            }

            (length, elbows, tees) = (0, 0, 0);
        }

        if (run.Run.Count(step => !step.IsPipe) < 2)
        {
            problems.Add(DesignProblems.RunTooShort());
        }

        return problems.Count > 0
            ? Result<ImmutableArray<Join>>.Failed(problems)
            : joins.ToImmutable();
    }

    private sealed record Passage(PortAddress Enter, PortAddress Leave);

    private static bool First(PipeRun run, int i) => run.Run.Take(i).All(step => step.IsPipe);

    private static bool Last(PipeRun run, int i) => run.Run.Skip(i + 1).All(step => step.IsPipe);

    private static Result<Passage> Place(
        RunStep step,
        int i,
        bool first,
        bool last,
        Func<string, Part?> partOf
    )
    {
        var item = step.Item!;
        if (partOf(item) is not { } part)
        {
            return DesignProblems.NoSuchItemInRun(i, item);
        }

        var ports = Ports.Of(part);
        if (ports.IsEmpty)
        {
            return DesignProblems.PipeAsItem(i, item);
        }

        if (step.Port is { } named && !ports.Contains(named))
        {
            return DesignProblems.NoSuchPort(i, item, named, ports);
        }

        PortAddress At(string port) => new(item, port);
        if (Ports.SitsOnTee(part))
        {
            return new Passage(At(Ports.In), At(Ports.In));
        }

        if (Ports.IsTwoPort(part))
        {
            // at the start of a run a named port is where the run leaves
            var enter = step.Port ?? Ports.In;
            var other = enter == Ports.In ? Ports.Out : Ports.In;
            return first && step.Port is { } leave
                ? new Passage(At(leave), At(leave))
                : new Passage(At(enter), At(other));
        }

        if (step.Port is { } end && (first || last))
        {
            return new Passage(At(end), At(end));
        }

        return part is TeePart && step.Port is null && !first && !last
            ? new Passage(At("a"), At("b"))
            : DesignProblems.PortNeeded(i, item, ports);
    }
}
