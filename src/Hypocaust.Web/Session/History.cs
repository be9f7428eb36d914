using System.Collections.Immutable;

namespace Hypocaust.Web.Session;

/// <summary>What was, what is, and what was undone; never changed, only replaced.</summary>
/// <typeparam name="T">A state.</typeparam>
public sealed record History<T>
{
    private readonly ImmutableStack<T> past;
    private readonly ImmutableStack<T> future;

    private History(ImmutableStack<T> past, T present, ImmutableStack<T> future)
    {
        this.past = past;
        Present = present;
        this.future = future;
    }

    /// <summary>What is.</summary>
    public T Present { get; }

    /// <summary>Whether there is something to undo.</summary>
    public bool CanUndo => !past.IsEmpty;

    /// <summary>Whether there is something to redo.</summary>
    public bool CanRedo => !future.IsEmpty;

    /// <summary>A history that begins here.</summary>
    public static History<T> From(T present) => new([], present, []);

    /// <summary>Goes on to a new state; what was undone is gone.</summary>
    public History<T> Then(T next) => new(past.Push(Present), next, []);

    /// <summary>Goes back one state; stays where there is none.</summary>
    public History<T> Undo() =>
        CanUndo ? new(past.Pop(out var before), before, future.Push(Present)) : this;

    /// <summary>Goes forward again; stays where nothing was undone.</summary>
    public History<T> Redo() =>
        CanRedo ? new(past.Push(Present), future.Peek(), future.Pop()) : this;
}
