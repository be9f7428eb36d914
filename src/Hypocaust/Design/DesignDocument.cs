using Hypocaust.Design.Editing;
using Hypocaust.Design.Source;
using Hypocaust.Problems;

namespace Hypocaust.Design;

/// <summary>A design together with the text from which it was read. Editing changes the text where the value stands and nothing else, so that a person's order and spacing survive.</summary>
public sealed class DesignDocument
{
    private readonly SourceText source;
    private readonly SourceNode root;
    private readonly Lazy<IReadOnlyDictionary<string, TextPosition>> places;

    internal DesignDocument(HeatingDesign design, SourceText source, SourceNode root)
    {
        Design = design;
        this.source = source;
        this.root = root;
        places = new(() => PlaceIndex.Of(root, source));
    }

    /// <summary>The design.</summary>
    public HeatingDesign Design { get; }

    /// <summary>The text exactly as read, a byte order mark included.</summary>
    public string Text => source.Text;

    /// <summary>The UTF-8 bytes exactly as read.</summary>
    public ReadOnlyMemory<byte> Bytes => source.Memory;

    /// <summary>Where each written value stands, by its path (<c>$.floor.loops[2].spacing</c>, <c>$.parts['copper 3/4']</c>).</summary>
    public IReadOnlyDictionary<string, TextPosition> Places => places.Value;

    /// <summary>What is written at a path: the characters of a text, or a number, true or false as it stands; null where nothing is written or a whole object or list stands.</summary>
    public string? Written(string path) =>
        Place.Parse(path) is { } place
            ? root.Find(place) switch
            {
                { Kind: SourceKind.String or SourceKind.Number } node => node.Text,
                { Kind: SourceKind.True } => "true",
                { Kind: SourceKind.False } => "false",
                _ => null,
            }
            : null;

    /// <summary>Writes one value and reads the design again. A value that is not there yet is added to its object, if that is there.</summary>
    /// <param name="path">Path of the value, such as <c>$.plant.items.pump.speed</c>.</param>
    /// <param name="newText">The value as a person types it (<c>9 kW</c>, <c>3</c>, <c>true</c>), or null to take out what stands there: a value, or a whole entry of a list or object.</param>
    /// <returns>The new document, or the problems that the edit would make; this document stays as it is.</returns>
    public Result<DesignDocument> Edit(string path, string? newText) =>
        TextEdit
            .Apply(source, root, path, newText)
            .Then(SourceText.From)
            .Then(edited => DesignFile.Read(edited));
}
