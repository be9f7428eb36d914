namespace Hypocaust.Papers.Drawing;

/// <summary>The sheet for what cannot be drawn yet.</summary>
internal static class Blank
{
    /// <summary>A small sheet that says in a sentence what is missing.</summary>
    public static Sheet Sheet(string name, string title, string sentence, SheetShape shape)
    {
        var width = shape == SheetShape.Wide ? 930.0 : 390.0;
        var canvas = new Canvas();
        var lines = Face.Soft.Lines(sentence, width - 44, 4);
        for (var i = 0; i < lines.Count; i++)
        {
            canvas.Text(Face.Soft, 22, 34 + (i * 17), lines[i]);
        }

        return canvas.Finish(name, title, sentence, width, 50 + (lines.Count * 17));
    }
}
