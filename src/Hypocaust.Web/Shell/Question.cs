using System.Collections.Immutable;

namespace Hypocaust.Web.Shell;

/// <summary>A page of the app: a question.</summary>
/// <param name="Name">Its short name.</param>
/// <param name="Address">Where it stands.</param>
/// <param name="Words">The question.</param>
public sealed record Question(string Name, string Address, string Words)
{
    /// <summary>Page name as findings carry it.</summary>
    public string Page => Name.ToLowerInvariant();
}

/// <summary>The questions in the order of the job.</summary>
public static class Questions
{
    /// <summary>How much heat the building needs.</summary>
    public static Question Space { get; } = new("Space", "/space", "How much heat is needed?");

    /// <summary>What the floor gives.</summary>
    public static Question Floor { get; } = new("Floor", "/floor", "Will the floor keep it warm?");

    /// <summary>What flows where.</summary>
    public static Question Plant { get; } = new("Plant", "/plant", "What flows where?");

    /// <summary>Everything unsafe or missing.</summary>
    public static Question Review { get; } = new("Review", "/review", "What is unsafe or missing?");

    /// <summary>All of them.</summary>
    public static ImmutableArray<Question> All { get; } = [Space, Floor, Plant, Review];
}
