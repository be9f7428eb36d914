using System.Text.Json;

namespace Hypocaust.Design.Source;

/// <summary>Reads JSON into nodes that know their place. Comments and trailing commas are reported and stepped over, so that the rest is still checked.</summary>
internal sealed class SourceReader
{
    /// <summary>Deepest nesting that is read; a design needs about ten.</summary>
    public const int DeepestNesting = 64;

    private readonly SourceText source;
    private readonly ProblemList problems;
    private readonly Stack<Frame> open = new();
    private string name = "";
    private int nameStart;
    private SourceNode? root;

    private SourceReader(SourceText source, ProblemList problems)
    {
        this.source = source;
        this.problems = problems;
    }

    /// <summary>Reads the whole text; null when its syntax is broken, which is then among the problems.</summary>
    public static SourceNode? Read(SourceText source, ProblemList problems) =>
        new SourceReader(source, problems).ReadAll();

    private SourceNode? ReadAll()
    {
        var reader = new Utf8JsonReader(
            source.Json,
            new JsonReaderOptions
            {
                AllowTrailingCommas = true,
                CommentHandling = JsonCommentHandling.Allow,
                MaxDepth = DeepestNesting + 2,
            }
        );
        try
        {
            while (reader.Read())
            {
                if (!Take(ref reader))
                {
                    return null;
                }
            }
        }
        catch (JsonException broken)
        {
            var at = source.OffsetOf(broken.LineNumber ?? 0, broken.BytePositionInLine ?? 0);
            problems.Add(SyntaxProblems.At(source, at, [.. open.Select(frame => frame.Opened)]));
            return null;
        }

        return root;
    }

    private bool Take(ref Utf8JsonReader reader)
    {
        var start = source.MarkLength + (int)reader.TokenStartIndex;
        var end = source.MarkLength + (int)reader.BytesConsumed;
        switch (reader.TokenType)
        {
            case JsonTokenType.Comment:
                problems.Add(DesignProblems.Comment(source.PositionOf(start)));
                return true;
            case JsonTokenType.StartObject or JsonTokenType.StartArray:
                open.Push(
                    new Frame(
                        new Opening(start, reader.TokenType == JsonTokenType.StartObject),
                        name,
                        nameStart
                    )
                );
                return open.Count <= DeepestNesting || TooDeep(start);
            case JsonTokenType.EndObject or JsonTokenType.EndArray:
                ReportTrailingComma(start);
                Close(end);
                return true;
            case JsonTokenType.PropertyName:
                nameStart = start;
                return ReadText(ref reader, start, out name);
            default:
                return TakeLeaf(ref reader, start, end);
        }
    }

    private bool TakeLeaf(ref Utf8JsonReader reader, int start, int end)
    {
        var text = "";
        if (reader.TokenType == JsonTokenType.String && !ReadText(ref reader, start, out text))
        {
            return false;
        }

        var kind = reader.TokenType switch
        {
            JsonTokenType.String => SourceKind.String,
            JsonTokenType.Number => SourceKind.Number,
            JsonTokenType.True => SourceKind.True,
            JsonTokenType.False => SourceKind.False,
            _ => SourceKind.Null,
        };
        text =
            kind == SourceKind.Number
                ? System.Text.Encoding.ASCII.GetString(reader.ValueSpan)
                : text;
        Keep(new SourceNode(kind, start, end) { Text = text }, name, nameStart);
        return true;
    }

    // half a surrogate pair ("\ud83d") passes the reader's syntax but is no text
    private bool ReadText(ref Utf8JsonReader reader, int start, out string text)
    {
        try
        {
            text = reader.GetString()!;
            return true;
        }
        catch (InvalidOperationException)
        {
            problems.Add(DesignProblems.BadEscape(source.PositionOf(start)));
            text = "";
            return false;
        }
    }

    private bool TooDeep(int start)
    {
        problems.Add(DesignProblems.TooDeep(source.PositionOf(start)));
        return false;
    }

    private void Close(int end)
    {
        var frame = open.Pop();
        var node = new SourceNode(
            frame.Opened.IsObject ? SourceKind.Object : SourceKind.Array,
            frame.Opened.Start,
            end
        )
        {
            Members = frame.Members,
            Items = frame.Items,
        };
        Keep(node, frame.Name, frame.NameStart);
    }

    private void Keep(SourceNode node, string memberName, int memberStart)
    {
        if (!open.TryPeek(out var frame))
        {
            root = node;
        }
        else if (frame.Opened.IsObject)
        {
            frame.Members.Add(new SourceMember(memberName, memberStart, node));
        }
        else
        {
            frame.Items.Add(node);
        }
    }

    private void ReportTrailingComma(int closing)
    {
        var at = closing - 1;
        while (at > 0 && source.Bytes[at] is (byte)' ' or (byte)'\t' or (byte)'\r' or (byte)'\n')
        {
            at--;
        }

        if (source.Bytes[at] == ',')
        {
            problems.Add(DesignProblems.TrailingComma(source.PositionOf(at)));
        }
    }

    private sealed record Frame(Opening Opened, string Name, int NameStart)
    {
        public List<SourceMember> Members { get; } = [];

        public List<SourceNode> Items { get; } = [];
    }
}

/// <summary>A bracket that is still open.</summary>
/// <param name="Start">Its byte.</param>
/// <param name="IsObject">Whether it is a brace.</param>
internal readonly record struct Opening(int Start, bool IsObject)
{
    public char Closing => IsObject ? '}' : ']';
}
