using System.Globalization;
using System.Text;

namespace Hypocaust.Papers.Drawing;

/// <summary>Writes a sheet as SVG.</summary>
internal static class SvgWriter
{
    /// <summary>The whole sheet.</summary>
    public static string Write(Sheet sheet, SvgForm form)
    {
        var text = new StringBuilder();
        var (width, height) = (Number(sheet.Width), Number(sheet.Height));
        if (form == SvgForm.StandAlone)
        {
            text.Append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        }

        text.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"sheet\" role=\"img\"");
        text.Append(CultureInfo.InvariantCulture, $" viewBox=\"0 0 {width} {height}\"");
        if (form == SvgForm.StandAlone)
        {
            text.Append(CultureInfo.InvariantCulture, $" width=\"{width}\" height=\"{height}\"");
        }

        text.Append(" aria-labelledby=\"")
            .Append(Escape(sheet.IdPrefix + sheet.Name))
            .Append("-title\">\n");
        text.Append("<title id=\"").Append(Escape(sheet.IdPrefix + sheet.Name)).Append("-title\">");
        text.Append(Escape(sheet.Title)).Append("</title>\n");
        text.Append("<desc>").Append(Escape(sheet.Description)).Append("</desc>\n");
        if (form == SvgForm.StandAlone)
        {
            text.Append("<style>\n").Append(SheetStyle.StandAloneCss);
            text.Append("\n</style>\n");
        }

        foreach (var mark in sheet.Marks)
        {
            Append(text, mark, sheet.IdPrefix);
        }

        return text.Append("</svg>\n").ToString();
    }

    /// <summary>Text as XML shows it; what XML cannot hold becomes the replacement character.</summary>
    public static string Escape(string words)
    {
        var text = new StringBuilder(words.Length);
        foreach (var rune in words.EnumerateRunes())
        {
            _ = rune.Value switch
            {
                '<' => text.Append("&lt;"),
                '>' => text.Append("&gt;"),
                '&' => text.Append("&amp;"),
                '"' => text.Append("&quot;"),
                '\'' => text.Append("&#39;"),
                '\t' or '\n' or '\r' => text.Append(' '),
                < 0x20 or 0xFFFE or 0xFFFF => text.Append('\uFFFD'),
                _ => text.Append(rune.ToString()),
            };
        }

        return text.ToString();
    }

    /// <summary>A coordinate, to a hundredth.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not a finite number.</exception>
    public static string Number(double value)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(
                nameof(value),
                value,
                "A coordinate is a finite number."
            );
        }

        var text = value.ToString("0.##", CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }

    private static void Append(StringBuilder text, Mark mark, string prefix)
    {
        switch (mark)
        {
            case Group group:
                AppendGroup(text, group, prefix);
                break;
            case Stroke stroke:
                AppendStroke(text, stroke);
                break;
            case Label label:
                AppendLabel(text, label);
                break;
            case Ellipse ellipse:
                text.Append("<ellipse").Append(Class(mark));
                Attribute(text, "cx", ellipse.Centre.X);
                Attribute(text, "cy", ellipse.Centre.Y);
                Attribute(text, "rx", ellipse.RadiusX);
                Attribute(text, "ry", ellipse.RadiusY);
                text.Append("/>\n");
                break;
            case Box box:
                text.Append("<rect").Append(Class(mark));
                Attribute(text, "x", box.Bounds.Left);
                Attribute(text, "y", box.Bounds.Top);
                Attribute(text, "width", box.Bounds.Width);
                Attribute(text, "height", box.Bounds.Height);
                text.Append(box.Fill is { } fill ? $" fill=\"{Escape(fill)}\"" : "");
                text.Append("/>\n");
                break;
            default:
                throw new NotSupportedException($"Mark {mark.GetType().Name} has no SVG form.");
        }
    }

    private static void AppendGroup(StringBuilder text, Group group, string prefix)
    {
        text.Append("<g").Append(Class(group));
        if (group.Id is { } id)
        {
            text.Append(" id=\"").Append(Escape(prefix + id)).Append('"');
        }

        if (group.Item is { } item)
        {
            text.Append(" data-item=\"").Append(Escape(item)).Append('"');
        }

        text.Append(">\n");
        if (group.Title is { } title)
        {
            text.Append("<title>").Append(Escape(title)).Append("</title>\n");
        }

        foreach (var mark in group.Marks)
        {
            Append(text, mark, prefix);
        }

        text.Append("</g>\n");
    }

    private static void AppendStroke(StringBuilder text, Stroke stroke)
    {
        text.Append("<path").Append(Class(stroke)).Append(" d=\"");
        for (var i = 0; i < stroke.Points.Length; i++)
        {
            text.Append(i == 0 ? 'M' : 'L').Append(Number(stroke.Points[i].X)).Append(' ');
            text.Append(Number(stroke.Points[i].Y));
        }

        text.Append(stroke.Closed ? "Z\"" : "\"");
        text.Append(stroke.Fill is { } fill ? $" fill=\"{Escape(fill)}\"" : "");
        if (stroke.Colour is { } colour)
        {
            text.Append(" stroke=\"").Append(Escape(colour)).Append('"');
        }

        if (stroke.Width is { } width)
        {
            Attribute(text, "stroke-width", width);
        }

        text.Append("/>\n");
    }

    private static void AppendLabel(StringBuilder text, Label label)
    {
        text.Append("<text").Append(Class(label));
        Attribute(text, "x", label.At.X);
        Attribute(text, "y", label.At.Y);
        text.Append(
            label.Anchor switch
            {
                Anchor.Middle => " text-anchor=\"middle\"",
                Anchor.End => " text-anchor=\"end\"",
                _ => "",
            }
        );
        text.Append('>').Append(Escape(label.Words)).Append("</text>\n");
    }

    private static string Class(Mark mark) =>
        mark.Style.Length == 0 ? "" : $" class=\"{Escape(mark.Style)}\"";

    private static void Attribute(StringBuilder text, string name, double value) =>
        text.Append(' ').Append(name).Append("=\"").Append(Number(value)).Append('"');
}
