using System.Collections.Immutable;
using Hypocaust.Design;
using Hypocaust.Problems;
using Hypocaust.Verdicts;

namespace Hypocaust.Web.Session;

/// <summary>The one design that this program has open, shared by all its windows.</summary>
public sealed class DesignSession : IDisposable
{
    private readonly Lock gate = new();
    private readonly EditJournal? journal;
    private readonly TimeProvider clock;

    // From where the journal's steps start
    private Beginning start;

    /// <summary>Starts with a design; steps that an earlier run left in the journal are brought back.</summary>
    /// <param name="document">The design.</param>
    /// <param name="name">Name under which it is saved.</param>
    /// <param name="place">Its file; null for a working copy without one.</param>
    /// <param name="journal">Where steps are kept until saved; null where there is no such place.</param>
    /// <param name="clock">The clock.</param>
    public DesignSession(
        DesignDocument document,
        string name,
        DesignPlace? place,
        EditJournal? journal,
        TimeProvider clock
    )
    {
        this.journal = journal;
        this.clock = clock;
        start = new Beginning(document, name, place);
        View = Fresh(document, name, place, journal is null ? Notices.NoJournal : null);
        TakeUpJournal();
    }

    /// <summary>Something changed: look at <see cref="View"/> again. Raised on the thread that made the change.</summary>
    public event EventHandler? Changed;

    /// <summary>What to show now.</summary>
    public SessionView View { get; private set; }

    /// <summary>Changes one value; an entry that cannot be used is kept beside its problems and the answer stays as it was.</summary>
    public void Edit(DesignEdit edit) =>
        Step(() =>
        {
            if (Apply(View, edit))
            {
                journal?.Write(JournalStep.Edited, edit);
            }
        });

    /// <summary>Goes back one step.</summary>
    public void Undo() =>
        Step(() =>
        {
            if (View.History.CanUndo)
            {
                View = Back(View);
                journal?.Write(JournalStep.Undone);
            }
        });

    /// <summary>Goes forward again.</summary>
    public void Redo() =>
        Step(() =>
        {
            if (View.History.CanRedo)
            {
                View = Forward(View);
                journal?.Write(JournalStep.Redone);
            }
        });

    /// <summary>Opens another design in place of this one; one that cannot be read leaves everything as it is and lists its problems.</summary>
    /// <param name="name">Name of the file.</param>
    /// <param name="text">Its text.</param>
    public void Open(string name, string text) =>
        Step(() =>
        {
            if (ApplyOpening(name, text))
            {
                journal?.Write(JournalStep.Opened, name: name, text: text);
            }
        });

    /// <summary>Writes the design to its file.</summary>
    public void Save() =>
        Step(() =>
        {
            if (View.Place is not { } place)
            {
                return;
            }

            var document = View.Present.Document;
            var saved = DesignOnDisk.Save(place.Path, document, place.Stamp);
            if (!saved.TryGet(out var stamp))
            {
                View = View with { Notice = Notices.NotSaved(saved.Problems) };
                return;
            }

            View = View with
            {
                Place = place with { Stamp = stamp },
                SavedText = document.Text,
                SavedAt = clock.GetLocalNow(),
                Restored = null,
                Notice = null,
            };
            start = new Beginning(document, View.FileName, View.Place);
            journal?.Restart(document.Text);
        });

    /// <summary>Keeps the edits of the earlier run and stops asking.</summary>
    public void KeepRestored() => Step(() => View = View with { Restored = null });

    /// <summary>Goes back to the design as it was before the edits that were brought back.</summary>
    public void DiscardRestored() =>
        Step(() =>
        {
            View = Fresh(start.Document, start.Name, start.Place, null);
            journal?.Restart(start.Document.Text);
        });

    /// <summary>Takes the list of problems or the notice away.</summary>
    public void Dismiss() => Step(() => View = View with { Unreadable = null, Notice = null });

    /// <inheritdoc/>
    public void Dispose() => journal?.Dispose();

    private void Step(Action step)
    {
        lock (gate)
        {
            step();
        }

        Changed?.Invoke(this, EventArgs.Empty);
    }

    private bool Apply(SessionView view, DesignEdit edit)
    {
        // An emptied field takes the value out, so that the default holds again
        var edited = view.Present.Document.Edit(
            edit.Path,
            edit.Text.Length == 0 ? null : edit.Text
        );
        if (!edited.TryGet(out var document))
        {
            View = view with
            {
                Rejections = view.Rejections.SetItem(
                    edit.Path,
                    new Rejection(edit.Text, edited.Problems)
                ),
            };
            return false;
        }

        var now = new Moment(document, Study.Solve(document.Design), edit.What);
        View = view with
        {
            History = view.History.Then(now),
            Change = ChangeOf(view.Present, now, edit.What),
            Rejections = view.Rejections.Remove(edit.Path),
        };
        return true;
    }

    private bool ApplyOpening(string name, string text)
    {
        var read = DesignFile.Read(text);
        if (!read.TryGet(out var document))
        {
            View = View with { Unreadable = new Unreadable(name, read.Problems) };
            return false;
        }

        // Undo leads back to the design that was open; the file that it came from is no longer the one to save to
        View = View with
        {
            History = View.History.Then(
                new Moment(document, Study.Solve(document.Design), $"{name} opened")
            ),
            Change = $"{name} opened",
            FileName = name,
            Place = null,
            SavedText = null,
            Rejections = View.Rejections.Clear(),
            Unreadable = null,
        };
        return true;
    }

    private static SessionView Back(SessionView view) =>
        Turn(view, view.History.Undo(), $"undone: {view.Present.What}");

    private static SessionView Forward(SessionView view)
    {
        var history = view.History.Redo();
        return Turn(view, history, $"again: {history.Present.What}");
    }

    private static SessionView Turn(SessionView view, History<Moment> history, string what) =>
        view with
        {
            History = history,
            Change = ChangeOf(view.Present, history.Present, what),
            Rejections = view.Rejections.Clear(),
        };

    private static string ChangeOf(Moment before, Moment now, string what) =>
        ChangeLine.Between(before.Answer, now.Answer, now.Units, what);

    private void TakeUpJournal()
    {
        if (journal is null)
        {
            return;
        }

        var (fits, steps) = journal.Read(start.Document.Text);
        if (fits)
        {
            foreach (var step in steps)
            {
                Replay(step);
            }

            View = View with
            {
                Restored = steps.IsEmpty ? null : new Restored(steps[^1].At, steps.Length),
                Rejections = View.Rejections.Clear(),
            };
            return;
        }

        if (!steps.IsEmpty)
        {
            View = View with { Notice = Notices.SetAside(journal.SetAside()) };
        }

        journal.Restart(start.Document.Text);
    }

    private void Replay(JournalStep step)
    {
        switch (step)
        {
            case { Do: JournalStep.Edited, Edit: { } edit }:
                Apply(View, edit);
                break;
            case { Do: JournalStep.Opened, Name: { } name, Text: { } text }:
                ApplyOpening(name, text);
                break;
            case { Do: JournalStep.Undone }:
                View = Back(View);
                break;
            case { Do: JournalStep.Redone }:
                View = Forward(View);
                break;
            default:
                break;
        }
    }

    private static SessionView Fresh(
        DesignDocument document,
        string name,
        DesignPlace? place,
        string? notice
    ) =>
        new(
            History<Moment>.From(new Moment(document, Study.Solve(document.Design), "")),
            "",
            name,
            place,
            place is null ? null : document.Text,
            null,
            ImmutableDictionary<string, Rejection>.Empty,
            null,
            null,
            notice
        );

    private sealed record Beginning(DesignDocument Document, string Name, DesignPlace? Place);
}
