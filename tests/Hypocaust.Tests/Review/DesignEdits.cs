using System.Text.Json.Nodes;
using Hypocaust.Design;

namespace Hypocaust.Tests.Review;

/// <summary>Edits the JSON of a design as somebody at the board would change the plant: takes parts out, puts others in, turns them round.</summary>
internal sealed class DesignEdits
{
    private readonly JsonObject root;

    private DesignEdits(JsonObject root) => this.root = root;

    public static DesignEdits Of(string text) => new(JsonNode.Parse(text)!.AsObject());

    public string Text => root.ToJsonString();

    public DesignDocument Read()
    {
        var read = DesignFile.Read(Text);
        read.Problems.Select(problem => problem.ToString()).ShouldBeEmpty();
        return read.Value;
    }

    public JsonObject Items => root["plant"]!["items"]!.AsObject();

    public JsonArray Runs => root["plant"]!["runs"]!.AsArray();

    public JsonArray Loops => root["floor"]!["loops"]!.AsArray();

    /// <summary>Writes a value; steps of the path are parted by a slash, a number counts in a list.</summary>
    public DesignEdits Set(string path, JsonNode? value)
    {
        var steps = path.Split('/');
        JsonNode at = root;
        foreach (var step in steps[..^1])
        {
            at = (at is JsonArray list ? list[Index(step)] : at[step])!;
        }

        if (at is JsonArray array)
        {
            array[Index(steps[^1])] = value;
        }
        else
        {
            at[steps[^1]] = value;
        }

        return this;
    }

    public DesignEdits Remove(string path)
    {
        var cut = path.LastIndexOf('/');
        JsonNode at = root;
        foreach (var step in cut < 0 ? [] : path[..cut].Split('/'))
        {
            at = (at is JsonArray list ? list[Index(step)] : at[step])!;
        }

        at.AsObject().Remove(path[(cut + 1)..]).ShouldBeTrue(path);
        return this;
    }

    /// <summary>Writes a value in every loop.</summary>
    public DesignEdits SetLoops(string key, string value)
    {
        foreach (var loop in Loops)
        {
            loop![key] = value;
        }

        return this;
    }

    /// <summary>Adds a part to the shelf.</summary>
    public DesignEdits Shelve(string name, string json)
    {
        var shelf = root["parts"]?.AsObject() ?? [];
        root["parts"] = shelf;
        shelf[name] = JsonNode.Parse(json);
        return this;
    }

    /// <summary>Gives an item a part made for it.</summary>
    public DesignEdits Make(string item, string json) =>
        Shelve($"{item} made", json).Set($"plant/items/{item}/part", $"{item} made");

    /// <summary>Takes an item out; its neighbours in the runs are joined.</summary>
    public DesignEdits TakeOut(params string[] items)
    {
        foreach (var item in items)
        {
            Items.Remove(item).ShouldBeTrue(item);
            Unpipe(item);
        }

        return this;
    }

    /// <summary>Takes an item out of all runs, but not off the list.</summary>
    public DesignEdits Unpipe(string item)
    {
        foreach (var run in Runs.ToList())
        {
            var steps = run!["run"]!.AsArray();
            foreach (var step in steps.Where(step => IsItem(step, item)).ToList())
            {
                steps.Remove(step);
            }

            TrimPipe(steps);
            if (steps.Count < 2)
            {
                Runs.Remove(run);
            }
        }

        return this;
    }

    /// <summary>Adds an item and writes it in a run right behind a step.</summary>
    public DesignEdits PutBehind(string step, string item, string part, string? height = null)
    {
        Items[item] = new JsonObject { ["part"] = part, ["height"] = height ?? "1 m" };
        var steps = Runs.Select(run => run!["run"]!.AsArray())
            .First(run => run.Any(text => (string?)text == step));
        var at = steps.TakeWhile(text => (string?)text != step).Count();
        steps.Insert(at + 1, item);
        return this;
    }

    /// <summary>Turns an item round, or swaps two of its ports.</summary>
    public DesignEdits Swap(string item, string one, string other)
    {
        foreach (var run in Runs)
        {
            var steps = run!["run"]!.AsArray();
            for (var i = 0; i < steps.Count; i++)
            {
                var text = (string)steps[i]!;
                steps[i] =
                    text == $"{item}.{one}" ? $"{item}.{other}"
                    : text == $"{item}.{other}" ? $"{item}.{one}"
                    : text == item ? $"{item}.{other}"
                    : text;
            }
        }

        return this;
    }

    public DesignEdits TurnRound(string item) => Swap(item, "in", "out");

    private static bool IsItem(JsonNode? step, string item) =>
        (string?)step == item || ((string?)step)!.StartsWith(item + ".", StringComparison.Ordinal);

    private static void TrimPipe(JsonArray steps)
    {
        static bool IsPipe(JsonNode? step) => char.IsAsciiDigit(((string)step!)[0]);
        while (steps.Count > 0 && IsPipe(steps[0]))
        {
            steps.RemoveAt(0);
        }

        while (steps.Count > 0 && IsPipe(steps[^1]))
        {
            steps.RemoveAt(steps.Count - 1);
        }
    }

    private static int Index(string step) =>
        int.Parse(step, System.Globalization.CultureInfo.InvariantCulture);
}
