using System.Text;
using System.Text.Unicode;
using Hypocaust.Problems;

namespace Hypocaust.Design.Source;

/// <summary>The bytes of a file and where its lines begin, so that a byte offset becomes a line and a column.</summary>
internal sealed class SourceText
{
    /// <summary>Largest file that is read, in bytes: a hundred times a large design.</summary>
    public const int LargestFile = 4 * 1024 * 1024;

    private readonly byte[] bytes;
    private List<int>? lineStarts;

    private SourceText(byte[] bytes) => this.bytes = bytes;

    /// <summary>The whole file, mark at its head included.</summary>
    public ReadOnlySpan<byte> Bytes => bytes;

    /// <summary>The same, to be kept.</summary>
    public ReadOnlyMemory<byte> Memory => bytes;

    /// <summary>Bytes that a byte order mark takes at the head.</summary>
    public int MarkLength => bytes is [0xEF, 0xBB, 0xBF, ..] ? 3 : 0;

    /// <summary>The JSON text after the mark.</summary>
    public ReadOnlySpan<byte> Json => Bytes[MarkLength..];

    /// <summary>The whole file as text.</summary>
    public string Text => Encoding.UTF8.GetString(bytes);

    /// <summary>Takes bytes that are UTF-8 and not too many.</summary>
    public static Result<SourceText> From(byte[] bytes)
    {
        if (bytes.Length > LargestFile)
        {
            return DesignProblems.TooLarge(bytes.Length);
        }

        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
        {
            return DesignProblems.NotUtf8(new TextPosition(1, 1));
        }

        var source = new SourceText(bytes);
        return Utf8.IsValid(bytes)
            ? source
            : DesignProblems.NotUtf8(source.PositionOf(FirstInvalid(bytes)));
    }

    /// <summary>Takes a text.</summary>
    public static Result<SourceText> From(string text)
    {
        // a char takes at least one byte, so that a text that is far too long is refused unseen
        if (text.Length > LargestFile)
        {
            return DesignProblems.TooLarge(text.Length);
        }

        try
        {
            return From(new UTF8Encoding(false, throwOnInvalidBytes: true).GetBytes(text));
        }
        catch (EncoderFallbackException broken)
        {
            var before = text[..broken.Index];
            var line = before.Count(c => c == '\n') + 1;
            return DesignProblems.NotUtf8(
                new TextPosition(line, broken.Index - before.LastIndexOf('\n'))
            );
        }
    }

    /// <summary>Takes a stream, and of a huge one no more than shows that it is too large.</summary>
    public static Result<SourceText> From(Stream stream)
    {
        if (stream.CanSeek && stream.Length - stream.Position > LargestFile)
        {
            return DesignProblems.TooLarge(stream.Length - stream.Position);
        }

        using var kept = new MemoryStream();
        var block = new byte[64 * 1024];
        for (int read; (read = stream.Read(block)) > 0; )
        {
            kept.Write(block, 0, read);
            if (kept.Length > LargestFile)
            {
                return DesignProblems.TooLarge(null);
            }
        }

        return From(kept.ToArray());
    }

    /// <summary>Line and column of a byte, both from 1; the column counts UTF-16 characters as editors do.</summary>
    public TextPosition PositionOf(int offset)
    {
        offset = Math.Clamp(offset, MarkLength, bytes.Length);
        var lines = lineStarts ??= FindLines();
        var line = lines.BinarySearch(offset);
        line = line < 0 ? ~line - 1 : line;
        var start = lines[line];
        return new TextPosition(line + 1, Encoding.UTF8.GetCharCount(Bytes[start..offset]) + 1);
    }

    /// <summary>The byte at a line (from 0) and a byte count in it.</summary>
    public int OffsetOf(long line, long byteInLine)
    {
        var lines = lineStarts ??= FindLines();
        return line < lines.Count
            ? (int)Math.Min(lines[(int)line] + byteInLine, bytes.Length)
            : bytes.Length;
    }

    private List<int> FindLines()
    {
        var starts = new List<int> { MarkLength };
        for (var i = MarkLength; i < bytes.Length; i++)
        {
            if (bytes[i] == '\n')
            {
                starts.Add(i + 1);
            }
        }

        return starts;
    }

    private static int FirstInvalid(ReadOnlySpan<byte> bytes)
    {
        var at = 0;
        while (
            at < bytes.Length
            && Rune.DecodeFromUtf8(bytes[at..], out _, out var taken)
                == System.Buffers.OperationStatus.Done
        )
        {
            at += taken;
        }

        return at;
    }
}
