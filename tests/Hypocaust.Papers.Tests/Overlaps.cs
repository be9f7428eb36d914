using Hypocaust.Papers.Drawing;

namespace Hypocaust.Papers.Tests;

/// <summary>Looks for marks of a sheet that run into one another or off the sheet.</summary>
internal static class Overlaps
{
    public static IEnumerable<string> Of(Sheet sheet)
    {
        var claims = sheet.Claims;
        for (var i = 0; i < claims.Length; i++)
        {
            for (var j = i + 1; j < claims.Length; j++)
            {
                if (Clash(claims[i], claims[j]))
                {
                    yield return $"{claims[i]} meets {claims[j]}";
                }
            }
        }

        foreach (var label in Labels(sheet.Marks))
        {
            // a letter within a symbol lies on the symbol's body, not on the pipe below it
            var within = claims.Any(claim =>
                claim.Room.Width > label.Bounds.Width + 2 && Holds(claim.Room, label.Bounds)
            );
            foreach (
                var pipe in within
                    ? []
                    : sheet
                        .PipeRooms.Where(pipe => pipe.Overlaps(label.Bounds.Grown(-1.5)))
                        .ToArray()
            )
            {
                yield return $"'{label.Words}' {label.Bounds} lies on a pipe {pipe}";
            }

            if (
                label.Bounds.Left < -0.5
                || label.Bounds.Right > sheet.Width + 0.5
                || label.Bounds.Top < 0
                || label.Bounds.Bottom > sheet.Height
            )
            {
                yield return $"'{label.Words}' {label.Bounds} leaves the sheet";
            }
        }
    }

    public static IEnumerable<Label> Labels(IEnumerable<Mark> marks) =>
        marks.SelectMany(mark =>
            mark switch
            {
                Label label => [label],
                Group group => Labels(group.Marks),
                _ => Enumerable.Empty<Label>(),
            }
        );

    public static IEnumerable<Group> Groups(IEnumerable<Mark> marks) =>
        marks.OfType<Group>().SelectMany(group => Groups(group.Marks).Prepend(group));

    private static bool Holds(Bounds outer, Bounds inner) => outer.With(inner) == outer;

    // Within one item only words can be in one another's way
    private static bool Clash(Claim a, Claim b) =>
        a.Room.Grown(-0.5).Overlaps(b.Room.Grown(-0.5)) && a.Owner != b.Owner;
}
