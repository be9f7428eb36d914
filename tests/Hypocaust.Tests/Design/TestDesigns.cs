using Hypocaust.Design;
using Hypocaust.Problems;

namespace Hypocaust.Tests.Design;

/// <summary>A design of ours that uses every section, and ways to plant one fault in it.</summary>
internal static class TestDesigns
{
    public const string Workshop = """
        {
          "$schema": "./hypocaust.schema.json",
          "version": 1,
          "name": "Boat workshop",
          "units": "us",
          "site": { "designOutdoor": "-4 °F", "annualMean": "48 °F", "altitude": "650 ft" },
          "building": {
            "thermalBridges": "0.05 W/m²K",
            "constructions": {
              "stud wall": {
                "layers": [
                  { "material": "gypsum board", "thickness": "1/2 in" },
                  {
                    "material": "mineral wool",
                    "thickness": "5 1/2 in",
                    "bridge": { "share": "15 %", "material": "softwood" }
                  },
                  { "resistance": "R-2" },
                  { "conductivity": "0.13 W/mK", "thickness": "18 mm" }
                ]
              },
              "glass": { "u": "0.3 BTU/h·ft²·°F" }
            },
            "zones": {
              "shop": {
                "indoor": "62 °F",
                "floorArea": "640 ft²",
                "volume": "6400 ft³",
                "elements": {
                  "north": { "kind": "wall", "area": "300 ft²", "construction": "stud wall" },
                  "office side": { "kind": "wall", "area": "120 ft²", "construction": "stud wall", "zone": "office" },
                  "lean-to": { "kind": "wall", "area": "80 ft²", "u": "0.5 W/m²K", "farSide": "30 °F" },
                  "window 1": { "kind": "window", "area": "24 ft²", "construction": "glass" }
                },
                "ground": {
                  "area": "640 ft²",
                  "exposedPerimeter": "88 ft",
                  "resistance": "R-10",
                  "edge": { "position": "vertical", "reach": "2 ft", "resistance": "R-10", "thickness": "2 in" }
                }
              },
              "office": { "indoor": "68 °F", "floorArea": "140 ft²", "volume": "1100 ft³", "airChange": "0.4 1/h" }
            }
          },
          "floor": {
            "sections": {
              "slab": { "cover": "2 in", "slabConductivity": "1.2..1.6 W/mK", "below": "R-10", "use": "occupied" }
            },
            "loops": [
              { "name": "door side", "zone": "shop", "section": "slab", "tube": "pex barrier 1/2", "spacing": "12 in", "area": "210 ft²", "manifold": "bars", "leader": "10 ft" },
              { "name": "back", "zone": "shop", "section": "slab", "tube": "pex barrier 1/2", "spacing": "12 in", "area": "210 ft²", "valve": "Kv 0.8" },
              { "name": "desk", "zone": "office", "section": "slab", "tube": "my tube", "spacing": "9 in", "area": "120 ft²", "shut": true }
            ]
          },
          "parts": {
            "my tube": { "kind": "pipe", "material": "pex", "inner": "0.475 in", "outer": "0.625 in", "oxygenBarrier": false },
            "used pump": {
              "kind": "circulator",
              "speeds": [
                {
                  "power": "60 W",
                  "curve": [
                    { "flow": "0 gpm", "head": "14 ft" },
                    { "flow": "6 gpm", "head": "11 ft" },
                    { "flow": "12 gpm", "head": "3 ft" }
                  ]
                }
              ]
            }
          },
          "plant": {
            "fluid": { "kind": "propyleneGlycol", "share": "35 %" },
            "coldFill": "12 psi",
            "items": {
              "boiler": { "part": "electric heater 9 kW", "setPoint": "105 °F", "height": "4 ft" },
              "relief": { "part": "relief 30 psi" },
              "air": { "part": "air separator 3/4" },
              "tank": { "part": "vessel 12 L", "precharge": "12 psi" },
              "pump1": { "part": "used pump" },
              "tees": { "part": "closely spaced tees 3/4" },
              "pump2": { "part": "circulator small", "speed": 2, "note": "slowest that still purges" },
              "bars": { "part": "manifold 3 loops" },
              "t1": { "part": "thermometer" },
              "branch": { "part": "tee" },
              "spare": { "part": "ball valve 3/4", "shut": true }
            },
            "runs": [
              {
                "pipe": "copper M 3/4",
                "run": ["boiler.out", "relief", "2 ft, 1 elbow", "air", "tank", "pump1", "1.5 ft", "tees.primaryIn"]
              },
              { "pipe": "copper M 3/4", "run": ["tees.primaryOut", "5 ft, 3 elbows, 1 tee", "branch", "1 ft", "boiler"] },
              { "pipe": "copper M 3/4", "run": ["branch.c", "6 in", "spare.in"] },
              { "pipe": "copper M 3/4", "run": ["tees.secondaryOut", "pump2", "t1", "1 ft", "8 in", "bars.supply"], "insulation": "1/2 in" },
              { "pipe": "copper M 3/4", "run": ["bars.return", "4 ft, 2 elbows", "tees.secondaryIn"] }
            ]
          },
          "board": { "width": "4 ft", "odd": [1, 2.50, null, { "x": true }] },
          "note": "Read the label of the used pump again"
        }
        """;

    /// <summary>The design with one piece of text in place of another that stands in it once.</summary>
    public static string With(string old, string replacement)
    {
        Workshop.Split(old).Length.ShouldBe(2, $"the text to replace must stand there once: {old}");
        return Workshop.Replace(old, replacement, StringComparison.Ordinal);
    }

    public static IReadOnlyList<Problem> ProblemsOf(string text) => DesignFile.Read(text).Problems;

    public static DesignDocument Read(string text)
    {
        var read = DesignFile.Read(text);
        read.Problems.Select(problem => $"{problem.Position} {problem}").ShouldBeEmpty();
        return read.Value;
    }

    /// <summary>Where a piece of text stands, counted here on its own.</summary>
    public static TextPosition PositionOf(string text, string piece)
    {
        var at = text.IndexOf(piece, StringComparison.Ordinal);
        at.ShouldBeGreaterThanOrEqualTo(0);
        var lines = text[..at].Split('\n');
        return new TextPosition(lines.Length, lines[^1].Length + 1);
    }
}
