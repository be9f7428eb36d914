using System.Collections.Immutable;
using Hypocaust.Papers.Drawing;

namespace Hypocaust.Papers.Piping;

/// <summary>The layers of a plant drawing: pipes below, symbols and words above.</summary>
internal sealed class PlantCanvas(TemperatureScale scale)
{
    /// <summary>Flow below which water counts as still, kg/s.</summary>
    public const double StillKgPerS = 1e-7;

    /// <summary>Colours of the water.</summary>
    public TemperatureScale Scale { get; } = scale;

    /// <summary>Pipes.</summary>
    public Canvas Pipes { get; } = new();

    /// <summary>Symbols and words.</summary>
    public Canvas Over { get; } = new();

    /// <summary>Rooms of pipes, which words keep clear of.</summary>
    public List<Bounds> PipeRooms { get; } = [];

    /// <summary>Rooms kept clear of symbols and words for pipes still to come.</summary>
    public List<Bounds> Keep { get; } = [];

    /// <summary>Straight pieces in which the water stands still.</summary>
    public List<(Point From, Point To, int Line)> Still { get; } = [];

    /// <summary>Whether a room is free of words, symbols and pipes.</summary>
    public bool IsFree(Bounds room) =>
        !Over.Claims.Any(claim => claim.Room.Overlaps(room))
        && !PipeRooms.Exists(pipe => pipe.Overlaps(room));

    /// <summary>Whether no words or symbols of one item lie on another's, and no words on a pipe.</summary>
    public bool IsClear()
    {
        var claims = Over.Claims;
        for (var i = 0; i < claims.Count; i++)
        {
            var room = claims[i].Room.Grown(-0.5);
            for (var j = i + 1; j < claims.Count; j++)
            {
                if (claims[i].Owner != claims[j].Owner && room.Overlaps(claims[j].Room.Grown(-0.5)))
                {
                    return false;
                }
            }
        }

        return !Over.Words()
            .Any(words =>
                PipeRooms.Exists(pipe => pipe.Overlaps(words.Grown(-1.5)))
                && !claims.Any(claim =>
                    claim.Room.Width > words.Width + 2 && claim.Room.Holds(words)
                )
            );
    }
}

/// <summary>Draws pipes along the way of the water.</summary>
internal sealed class Pen(PlantCanvas canvas, int line)
{
    private readonly List<Point> points = [];
    private PipeElement? pipe;

    /// <summary>Whether the pen draws return pipes, dashed.</summary>
    public bool Return { get; set; }

    /// <summary>Where the pen is.</summary>
    public Point At => points[^1];

    /// <summary>Lifts the pen to a place.</summary>
    public void MoveTo(Point at)
    {
        points.Clear();
        points.Add(at);
    }

    /// <summary>The pipe that is drawn next.</summary>
    public void Take(PipeElement next) => pipe = next;

    /// <summary>Turns at a corner.</summary>
    public void Corner(Point at)
    {
        if (points.Count == 0 || points[^1] != at)
        {
            points.Add(at);
        }
    }

    /// <summary>Draws up to a place and stays there.</summary>
    public void Arrive(Point at)
    {
        Corner(at);
        if (points.Count > 1)
        {
            Draw();
        }

        MoveTo(at);
    }

    private void Draw()
    {
        var flow = pipe?.FlowKgPerS;
        var role = Return ? " return" : "";
        ImmutableArray<Point> way = flow < 0 ? [.. points.AsEnumerable().Reverse()] : [.. points];
        Rooms();
        if (flow is null)
        {
            canvas.Pipes.Line("plain" + role, way.AsSpan());
        }
        else if (Math.Abs(flow.Value) < PlantCanvas.StillKgPerS)
        {
            canvas.Pipes.Line("still" + role, way.AsSpan());
            canvas.Still.AddRange(points.Zip(points.Skip(1), (a, b) => (a, b, line)));
        }
        else
        {
            var colour = pipe!.Piece.TemperatureC is { } t ? canvas.Scale.Colour(t) : null;
            canvas.Pipes.Line("case" + role, way.AsSpan());
            if (colour is not null)
            {
                canvas.Pipes.Add(new Stroke("water" + role, way, Colour: colour));
            }

            canvas.Pipes.Line("flow", way.AsSpan());
            Arrow(way);
        }
    }

    // One arrow on the longest straight piece, where it has room
    private void Arrow(ImmutableArray<Point> way)
    {
        var (a, b) = way.Zip(way.Skip(1)).MaxBy(pair => Length(pair.First, pair.Second));
        var length = Length(a, b);
        if (length >= 46)
        {
            var (dx, dy) = ((b.X - a.X) / length, (b.Y - a.Y) / length);
            canvas.Pipes.Arrow(
                new(((a.X + b.X) / 2) + (dx * 6), ((a.Y + b.Y) / 2) + (dy * 6)),
                dx,
                dy,
                6
            );
        }
    }

    private void Rooms()
    {
        foreach (var (a, b) in points.Zip(points.Skip(1)))
        {
            canvas.PipeRooms.Add(
                new Bounds(
                    Math.Min(a.X, b.X),
                    Math.Min(a.Y, b.Y),
                    Math.Max(a.X, b.X),
                    Math.Max(a.Y, b.Y)
                ).Grown(2.7)
            );
        }
    }

    private static double Length(Point a, Point b) => Math.Abs(a.X - b.X) + Math.Abs(a.Y - b.Y);
}
