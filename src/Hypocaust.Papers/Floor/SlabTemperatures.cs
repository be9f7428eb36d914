using System.Collections.Immutable;
using Hypocaust.Floor.Section;
using Hypocaust.Papers.Drawing;

namespace Hypocaust.Papers.Floor;

/// <summary>The temperatures in the concrete as bands of colour between isotherms.</summary>
internal sealed class SlabTemperatures(SectionField section, double spacingM)
{
    /// <summary>Coldest and warmest of the concrete in °C; the inside of the tube, which is at the water's own temperature, does not count.</summary>
    public (double ColdestC, double WarmestC) Range { get; } = RangeOf(section);

    private static (double ColdestC, double WarmestC) RangeOf(SectionField section)
    {
        var all = Enumerable
            .Range(0, section.Rows)
            .SelectMany(row =>
                Enumerable.Range(0, section.Columns).Select(column => section[column, row])
            )
            .ToList();
        var water = section[0, section.TubeRow];
        return (all.Min(), all.Where(celsius => Math.Abs(celsius - water) > 1e-6).Max());
    }

    /// <summary>Difference between isotherms in K: about twelve of them, on whole, half or double kelvins.</summary>
    public double StepK =>
        (Range.WarmestC - Range.ColdestC) switch
        {
            > 30 => 4,
            > 14 => 2,
            > 6 => 1,
            > 3 => 0.5,
            _ => 0.25,
        };

    /// <summary>Paints a room of the sheet.</summary>
    /// <param name="canvas">The sheet.</param>
    /// <param name="room">Where the slab lies.</param>
    /// <param name="firstTubeX">Where on the sheet a tube stands.</param>
    /// <param name="perMetre">Sheet units for a metre.</param>
    /// <param name="scale">Colours.</param>
    public void Paint(
        Canvas canvas,
        Bounds room,
        double firstTubeX,
        double perMetre,
        TemperatureScale scale
    )
    {
        var columns = Columns(room, firstTubeX, perMetre);
        List<double> rows =
        [
            room.Top,
            .. section.YM.Reverse().Select(height => room.Bottom - (height * perMetre)),
            room.Bottom,
        ];
        var contours = Contours.Of(
            [.. columns.Select(column => column.X)],
            rows,
            (column, row) =>
                section[columns[column].Column, Math.Clamp(section.Rows - row, 0, section.Rows - 1)]
        );
        var (coldest, warmest) = Range;
        var step = StepK;
        var first = Math.Floor(coldest / step);
        canvas.Add(new Box("", room, scale.Colour((first + 0.5) * step)));
        for (var level = first + 1; level * step <= warmest; level++)
        {
            foreach (var line in contours.At(level * step))
            {
                canvas.Add(
                    new Stroke(
                        "",
                        line,
                        Closed: true,
                        Colour: "#23272b",
                        Width: 0.35,
                        Fill: scale.Colour((level + 0.5) * step)
                    )
                );
            }
        }
    }

    // half a spacing, mirrored at each tube and midway between tubes, as often as the room is wide
    private List<(double X, int Column)> Columns(Bounds room, double firstTubeX, double perMetre)
    {
        var columns = new List<(double X, int Column)>();
        var pitch = spacingM * perMetre;
        for (
            var tube = firstTubeX - (Math.Ceiling((firstTubeX - room.Left) / pitch) * pitch);
            tube <= room.Right + pitch;
            tube += pitch
        )
        {
            for (var column = 0; column < section.Columns; column++)
            {
                columns.Add((tube - (section.XM[column] * perMetre), column));
                columns.Add((tube + (section.XM[column] * perMetre), column));
            }
        }

        columns.Sort();
        var inside = columns
            .Where(column => column.X > room.Left && column.X < room.Right)
            .ToList();
        return [(room.Left, inside[0].Column), .. inside, (room.Right, inside[^1].Column)];
    }
}
