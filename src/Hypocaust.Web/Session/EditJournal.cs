using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace Hypocaust.Web.Session;

/// <summary>Keeps every step on disk until the design is saved, so that a killed program loses nothing.</summary>
/// <remarks>One JSON object a line; the first names the text from which the steps start. A last line cut off in the middle of writing is left out.</remarks>
public sealed class EditJournal : IDisposable
{
    private static readonly JsonSerializerOptions Format = new(JsonSerializerDefaults.Web);
    private readonly FileStream file;
    private readonly TimeProvider clock;
    private int steps;

    private EditJournal(FileStream file, TimeProvider clock)
    {
        this.file = file;
        this.clock = clock;
    }

    /// <summary>Takes hold of a journal.</summary>
    /// <returns>The journal; null where another running program holds it or the folder cannot be written.</returns>
    public static EditJournal? TryOpen(string path, TimeProvider clock)
    {
        try
        {
            if (Path.GetDirectoryName(path) is { Length: > 0 } folder)
            {
                Directory.CreateDirectory(folder);
            }

            return new(
                new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None),
                clock
            );
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>What an earlier run left behind.</summary>
    public JournalContent Read(string baseText)
    {
        file.Position = 0;
        using var reader = new StreamReader(file, Encoding.UTF8, leaveOpen: true);
        var head = Parse<JournalHead>(reader.ReadLine());
        var steps = ImmutableArray.CreateBuilder<JournalStep>();
        while (reader.ReadLine() is { } line)
        {
            if (Parse<JournalStep>(line) is { Do: not null } step)
            {
                steps.Add(step);
            }
        }

        this.steps = steps.Count;
        return new(head?.StartsFrom == Fingerprint(baseText), steps.ToImmutable());
    }

    /// <summary>Copies the journal to a file beside it, so that its steps are not lost when it starts anew.</summary>
    /// <returns>The path of the copy.</returns>
    public string SetAside()
    {
        var aside = $"{file.Name}.{clock.GetUtcNow():yyyyMMddTHHmmss}";
        file.Position = 0;
        using var copy = File.Create(aside);
        file.CopyTo(copy);
        return aside;
    }

    /// <summary>Forgets all steps and starts anew from a text.</summary>
    public void Restart(string baseText)
    {
        file.SetLength(0);
        steps = 0;
        Append(new JournalHead(Fingerprint(baseText)));
    }

    /// <summary>Writes one step and waits until it is on the disk.</summary>
    public void Write(
        string what,
        DesignEdit? edit = null,
        string? name = null,
        string? text = null
    )
    {
        Append(new JournalStep(what, clock.GetUtcNow(), edit, name, text));
        steps++;
    }

    /// <summary>Lets go of the journal; one without steps leaves no file behind.</summary>
    public void Dispose()
    {
        file.Dispose();
        if (steps == 0)
        {
            File.Delete(file.Name);
        }
    }

    private void Append<T>(T line)
    {
        EndCutLine();
        file.Write(JsonSerializer.SerializeToUtf8Bytes(line, Format));
        file.WriteByte((byte)'\n');
        file.Flush(flushToDisk: true);
    }

    private void EndCutLine()
    {
        if (file.Length > 0)
        {
            file.Position = file.Length - 1;
            if (file.ReadByte() != '\n')
            {
                file.WriteByte((byte)'\n');
            }
        }

        file.Position = file.Length;
    }

    private static T? Parse<T>(string? line)
        where T : class
    {
        try
        {
            return line is null ? null : JsonSerializer.Deserialize<T>(line, Format);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static string Fingerprint(string text) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    private sealed record JournalHead(string StartsFrom);
}

/// <summary>What an earlier run left in a journal.</summary>
/// <param name="Fits">Whether its steps start from the text asked about.</param>
/// <param name="Steps">The steps, oldest first.</param>
public sealed record JournalContent(bool Fits, ImmutableArray<JournalStep> Steps);

/// <summary>One step of a journal.</summary>
/// <param name="Do">edit, undo, redo or open.</param>
/// <param name="At">When.</param>
/// <param name="Edit">The edit, of an edit.</param>
/// <param name="Name">Name of the file, of an opening.</param>
/// <param name="Text">Its text, of an opening.</param>
public sealed record JournalStep(
    string Do,
    DateTimeOffset At,
    DesignEdit? Edit = null,
    string? Name = null,
    string? Text = null
)
{
    /// <summary>An edit of a value.</summary>
    public const string Edited = "edit";

    /// <summary>A step back.</summary>
    public const string Undone = "undo";

    /// <summary>A step forward again.</summary>
    public const string Redone = "redo";

    /// <summary>Another design opened in its place.</summary>
    public const string Opened = "open";
}
