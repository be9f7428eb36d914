using System.Collections.Immutable;

namespace Hypocaust.Verdicts;

/// <summary>One or two plain sentences that answer the question of a page, with the numbers that decide.</summary>
/// <param name="Phrases">Text in order; numbers carry the path of the answer from which they come.</param>
public sealed record Verdict(ImmutableArray<Phrase> Phrases)
{
    /// <summary>The sentences as plain text.</summary>
    public string Text => string.Concat(Phrases.Select(phrase => phrase.Text));
}

/// <summary>A piece of a verdict.</summary>
/// <param name="Text">The words, or a number with its unit.</param>
/// <param name="Path">Path of the number in the answer, or null for words.</param>
public sealed record Phrase(string Text, string? Path = null);
