using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace Hypocaust.Problems;

/// <summary>Either a value or the problems that prevented it; never both, never neither.</summary>
/// <typeparam name="T">Type of the value.</typeparam>
public sealed class Result<T>
    where T : notnull
{
    private readonly T? value;

    private Result(T? value, ImmutableArray<Problem> problems)
    {
        this.value = value;
        Problems = problems;
    }

    /// <summary>The problems; empty when there is a value.</summary>
    public ImmutableArray<Problem> Problems { get; }

    /// <summary>Whether there is a value.</summary>
    public bool Succeeded => Problems.IsEmpty;

    /// <summary>The value.</summary>
    /// <exception cref="InvalidOperationException">There is none: the caller did not look at <see cref="Succeeded"/>.</exception>
    public T Value =>
        Succeeded
            ? value!
            : throw new InvalidOperationException(
                "No value: " + string.Join(" | ", Problems.Select(problem => problem.ToString()))
            );

    /// <summary>Wraps a value.</summary>
    public static implicit operator Result<T>(T value) => new(value, []);

    /// <summary>Wraps one problem.</summary>
    public static implicit operator Result<T>(Problem problem) => new(default, [problem]);

    /// <summary>Wraps problems.</summary>
    /// <exception cref="ArgumentException">There are none.</exception>
    public static Result<T> Failed(IEnumerable<Problem> problems)
    {
        ImmutableArray<Problem> all = [.. problems];
        return all.IsEmpty
            ? throw new ArgumentException("A failure needs at least one problem.", nameof(problems))
            : new(default, all);
    }

    /// <summary>Gives the value if there is one.</summary>
    public bool TryGet([MaybeNullWhen(false)] out T found)
    {
        found = value;
        return Succeeded;
    }

    /// <summary>Continues with the value, or passes the problems on.</summary>
    public Result<TNext> Then<TNext>(Func<T, Result<TNext>> next)
        where TNext : notnull => Succeeded ? next(value!) : Result<TNext>.Failed(Problems);
}
