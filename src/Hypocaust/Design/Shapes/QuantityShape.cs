using System.Globalization;
using System.Text.Json.Nodes;
using Hypocaust.Design.Schema;
using Hypocaust.Design.Source;
using Hypocaust.Problems;
using Hypocaust.Quantities;

namespace Hypocaust.Design.Shapes;

/// <summary>A number with its unit in one text.</summary>
internal sealed class QuantityShape<TKind> : ValueShape
    where TKind : IQuantityKind
{
    // A digit, a unit, and no comma inside a number: the part of our reading that a pattern can say
    private const string Pattern =
        "^(?=.*[0-9½¼¾⅓⅔⅛⅜⅝⅞])(?=.*[A-Za-z°'\"′″%µ])(?!.*[0-9],[0-9]).{2,64}$";

    private static QuantityKind Kind => TKind.Kind;

    public override string Described => Kind.NameWithArticle;

    public override string Example => $"\"{Kind.Example}\"";

    public override object StandIn => default(Quantity<TKind>);

    public override object? Read(SourceNode node, Place place, Reading reading)
    {
        if (node.Kind != SourceKind.String)
        {
            var problem =
                node.Kind == SourceKind.Number
                    ? DesignProblems.NumberWithoutUnit(node.Text, Kind)
                    : DesignProblems.WrongType(node, Described, Example);
            reading.AddHole(problem, place, node.Start);
            return null;
        }

        var read = Quantity<TKind>.Read(node.Text);
        if (read.TryGet(out var value))
        {
            return value;
        }

        foreach (var problem in read.Problems)
        {
            reading.AddHole(problem, place, node.Start);
        }

        return null;
    }

    public override object ReadDefault(string text) => Quantity<TKind>.Read(text).Value.Assumed();

    public override Problem? OutOfRange(object value, WithinAttribute within)
    {
        var quantity = (Quantity<TKind>)value;
        var low = quantity.Range?.LowSi ?? quantity.Si;
        var high = quantity.Range?.HighSi ?? quantity.Si;
        // a bound written in another unit may miss by a rounding: 1 m is 39.37007874015748 in
        var slack = 1e-12 * Math.Max(Math.Abs(within.Low), Math.Abs(within.High));
        if (low >= within.Low - slack && high <= within.High + slack)
        {
            return null;
        }

        var unit = QuantityText.UnitWritten(quantity.Text, Kind);
        return DesignProblems.OutOfBounds(
            DesignProblems.Quoted(quantity.Text),
            Bound(within.Low, unit, Math.Ceiling),
            Bound(within.High, unit, Math.Floor)
        );
    }

    public override JsonObject Schema(SchemaBook book) =>
        new()
        {
            ["type"] = "string",
            ["description"] = Quantity<TKind>.Form.Meaning,
            ["pattern"] = Pattern,
            ["examples"] = new JsonArray(Kind.Example),
        };

    public override void AddRange(JsonObject schema, WithinAttribute within)
    {
        var range =
            $"Between {Bound(within.Low, Kind.Si, Math.Ceiling)} and {Bound(within.High, Kind.Si, Math.Floor)}.";
        schema["description"] = $"{schema["description"]} {range}".Trim();
    }

    // Four digits, rounded into the range so that the bound shown is itself allowed
    private static string Bound(double si, Unit unit, Func<double, double> inwards)
    {
        var number = unit.FromSi(si);
        var figures = Convert.ToDouble(
            number.ToString("G12", CultureInfo.InvariantCulture),
            CultureInfo.InvariantCulture
        );
        if (figures != 0)
        {
            var step = Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(figures))) - 3);
            figures = Math.Round(inwards(Math.Round(figures / step, 6)) * step, 12);
        }

        var text = figures.ToString("G6", CultureInfo.InvariantCulture);
        return unit.Symbol switch
        {
            "1" => text,
            "Kv" or "Cv" => $"{unit.Symbol} {text}",
            _ => $"{text} {unit.Symbol}",
        };
    }
}
