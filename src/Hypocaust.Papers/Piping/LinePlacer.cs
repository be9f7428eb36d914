using System.Collections.Immutable;
using Hypocaust.Papers.Drawing;

namespace Hypocaust.Papers.Piping;

/// <summary>Places items along a straight pipe as close as their words allow.</summary>
internal sealed class LinePlacer(PlantCanvas canvas, ItemWords words, double nameWidth)
{
    private const double Step = 4;
    private const double Clearance = 4;

    private readonly Dictionary<ItemElement, Point> places = new(
        ReferenceEqualityComparer.Instance
    );

    /// <summary>Where an item was placed.</summary>
    public Point this[ItemElement item] => places[item];

    /// <summary>Places items from a point onward.</summary>
    /// <param name="items">In the order in which they stand along the pipe.</param>
    /// <param name="start">Where the pipe starts.</param>
    /// <param name="way">Where it goes.</param>
    /// <param name="flow">Direction in which the water's way is drawn along it.</param>
    /// <param name="sides">Sides on which words may stand, the preferred first.</param>
    /// <returns>How far along the pipe everything placed reaches.</returns>
    public double Place(
        IEnumerable<ItemElement> items,
        Point start,
        Way way,
        Way flow,
        params ImmutableArray<Way> sides
    )
    {
        var (cursor, reach) = (10.0, 0.0);
        foreach (var item in items)
        {
            var (glyph, along, half) = Best(item, start, way, flow, sides, cursor);
            canvas.Over.Adopt(glyph);
            places[item] = way.From(start, along);
            cursor = along + half + 6;
            reach = Math.Max(
                reach,
                Math.Max(cursor, glyph.Claims.Max(one => Reach(one, start, way)))
            );
        }

        return reach;
    }

    private (Canvas Glyph, double Along, double Half) Best(
        ItemElement item,
        Point start,
        Way way,
        Way flow,
        ImmutableArray<Way> sides,
        double cursor
    )
    {
        (Canvas Glyph, double Along, double Half)? best = null;
        foreach (var side in Allowed(item.Item, sides))
        {
            var glyph = Glyph.Draw(words, item, start, flow, side, nameWidth);
            var room = glyph.Claims[0].Room;
            var half =
                item.Item.IsTapped ? 8
                : way.IsLevel ? room.Width / 2
                : room.Height / 2;
            var along = cursor + half + 6;
            while (!Fits(glyph, way.From(default, along)))
            {
                along += Step;
            }

            if (best is null || along < best.Value.Along - 30)
            {
                best = (glyph, along, half);
            }
        }

        var (found, distance, size) = best!.Value;
        var move = way.From(default, distance);
        return (found.Moved(move.X, move.Y), distance, size);
    }

    // A vessel hangs, a vent and a relief valve stand
    private static ImmutableArray<Way> Allowed(DrawnItem item, ImmutableArray<Way> sides)
    {
        Way? must = item.Kind switch
        {
            SymbolKind.Vessel or SymbolKind.Drain => Way.Down,
            SymbolKind.AirVent or SymbolKind.Relief => Way.Up,
            _ => null,
        };
        if (must is { } side && sides.Contains(side))
        {
            return [side];
        }

        return item.Kind is SymbolKind.Thermometer or SymbolKind.Gauge || sides[0].IsLevel
            ? sides
            : [.. sides.Reverse()];
    }

    private bool Fits(Canvas glyph, Point move) =>
        glyph.Claims.All(claim =>
        {
            var room = claim.Room.Moved(move.X, move.Y).Grown(Clearance);
            return !canvas.Over.Claims.Any(other => other.Room.Overlaps(room))
                && !canvas.Keep.Exists(keep => keep.Overlaps(room))
                && !canvas.PipeRooms.Exists(pipe => pipe.Overlaps(room));
        });

    private static double Reach(Claim claim, Point start, Way way) =>
        way == Way.Right ? claim.Room.Right - start.X
        : way == Way.Left ? start.X - claim.Room.Left
        : way == Way.Down ? claim.Room.Bottom - start.Y
        : start.Y - claim.Room.Top;
}
