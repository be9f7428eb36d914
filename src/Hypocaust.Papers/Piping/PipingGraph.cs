using Hypocaust.Answers;
using Hypocaust.Design;

namespace Hypocaust.Papers.Piping;

/// <summary>The plant as items and pipes from port to port, read with patience: what does not fit is left out, not refused.</summary>
internal sealed class PipingGraph
{
    private readonly Dictionary<string, DrawnItem> items = new(StringComparer.Ordinal);

    private PipingGraph(HeatingDesign design, Answer answer)
    {
        Design = design;
        var parts = new PartLookup(design);
        Answer = answer.Plant;
        Floor = answer.Floor;
        var answered = (Answer?.Items ?? [])
            .GroupBy(item => item.Id, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.First(), StringComparer.Ordinal);
        foreach (var (name, item) in design.Plant?.Items ?? Named<PlantItem>.Empty)
        {
            var found = answered.GetValueOrDefault(name);
            var part = parts.Find(item.Part);
            items.Add(name, new(name, DrawnItem.KindOf(part, found?.Kind), item, part, found));
        }

        foreach (var run in design.Plant?.Runs ?? [])
        {
            Read(run);
        }
    }

    /// <summary>The design.</summary>
    public HeatingDesign Design { get; }

    /// <summary>The plant's answer, if there is one.</summary>
    public PlantAnswer? Answer { get; }

    /// <summary>The floor's answer, if there is one.</summary>
    public FloorAnswer? Floor { get; }

    /// <summary>Items by name.</summary>
    public IReadOnlyDictionary<string, DrawnItem> Items => items;

    /// <summary>Items in the order of the design.</summary>
    public IEnumerable<DrawnItem> InOrder => Design.Plant!.Items.Names.Select(name => items[name]);

    /// <summary>Pipes in the order of the runs.</summary>
    public List<Piece> Pieces { get; } = [];

    /// <summary>Reads a plant.</summary>
    public static PipingGraph Of(HeatingDesign design, Answer answer) => new(design, answer);

    private void Read(PipeRun run)
    {
        var steps = run
            .Run.Where(step => step.Item is { } name && items.ContainsKey(name))
            .ToList();
        (string Item, string Port)? last = null;
        for (var i = 0; i < steps.Count; i++)
        {
            var item = items[steps[i].Item!];
            var (enter, leave) = Passage(item, steps[i].Port, i == 0, i == steps.Count - 1);
            if (last is { } from)
            {
                Pieces.Add(Fill(from.Item, from.Port, item.Name, enter));
            }

            last = (item.Name, leave);
        }
    }

    // The rules of RunRoute: one way through from in to out, on a tee passed by, a tee from a to b
    private static (string Enter, string Leave) Passage(
        DrawnItem item,
        string? port,
        bool first,
        bool last
    )
    {
        if (item.IsTapped)
        {
            return ("in", "in");
        }

        if (item.IsInline)
        {
            var enter = port ?? "in";
            return first && port is not null ? (enter, enter)
                : first ? ("in", "out")
                : (enter, enter == "in" ? "out" : "in");
        }

        return item.Kind switch
        {
            _ when port is not null && (first || last) => (port, port),
            SymbolKind.Manifold => ("supply", "return"),
            SymbolKind.SpacedTees => ("primaryIn", "primaryOut"),
            _ => ("a", "b"),
        };
    }

    private Piece Fill(string fromItem, string fromPort, string toItem, string toPort)
    {
        foreach (var pipe in Answer?.Pipes ?? [])
        {
            var same = Fits(pipe.From, fromItem, fromPort) && Fits(pipe.To, toItem, toPort);
            var reversed = Fits(pipe.To, fromItem, fromPort) && Fits(pipe.From, toItem, toPort);
            if (same || reversed)
            {
                var flow = same ? pipe.FlowKgPerS : -pipe.FlowKgPerS;
                return new(fromItem, fromPort, toItem, toPort, flow, pipe.InC ?? pipe.OutC);
            }
        }

        return Answer is null
            ? new(fromItem, fromPort, toItem, toPort, null, null)
            : Guess(fromItem, fromPort, toItem, toPort);
    }

    // Without a pipe of its own a join carries what its neighbour carries
    private Piece Guess(string fromItem, string fromPort, string toItem, string toPort)
    {
        var (from, to) = (items[fromItem], items[toItem]);
        var flow =
            from.Answer?.FlowKgPerS is { } out1 && from.IsInline ? (fromPort == "in" ? -out1 : out1)
            : to.Answer?.FlowKgPerS is { } in1 && to.IsInline ? (toPort == "out" ? -in1 : in1)
            : Pieces.LastOrDefault(piece => piece.ToItem == fromItem)?.FlowKgPerS;
        var temperature =
            to.IsTapped ? to.Answer?.TemperatureC
            : from.IsInline || from.IsTapped ? from.Answer?.TemperatureC
            : to.Kind != SymbolKind.Heater ? to.Answer?.TemperatureC
            : Pieces.LastOrDefault(piece => piece.ToItem == fromItem)?.TemperatureC;
        return new(fromItem, fromPort, toItem, toPort, flow, temperature);
    }

    private static bool Fits(string address, string item, string port) =>
        address == item || address == $"{item}.{port}";
}
