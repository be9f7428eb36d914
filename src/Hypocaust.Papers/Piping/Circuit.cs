using System.Collections.Immutable;

namespace Hypocaust.Papers.Piping;

/// <summary>Something that the water meets on its way round a circuit.</summary>
internal abstract record Element
{
    /// <summary>The same, met from the other end.</summary>
    public abstract Element Reversed();
}

/// <summary>A pipe.</summary>
internal sealed record PipeElement(Piece Piece, bool Forward) : Element
{
    /// <summary>Flow along the way, kg/s; null where unanswered.</summary>
    public double? FlowKgPerS => Forward ? Piece.FlowKgPerS : -Piece.FlowKgPerS;

    /// <inheritdoc/>
    public override Element Reversed() => this with { Forward = !Forward };
}

/// <summary>A part in the pipe, on a tee, or a tee whose branches end blind.</summary>
internal sealed record ItemElement(
    DrawnItem Item,
    bool Forward,
    ImmutableArray<ImmutableArray<Element>> Stubs
) : Element
{
    /// <inheritdoc/>
    public override Element Reversed() => this with { Forward = !Forward };
}

/// <summary>A manifold with its loops.</summary>
internal sealed record ManifoldElement(DrawnItem Item, bool Forward) : Element
{
    /// <inheritdoc/>
    public override Element Reversed() => this with { Forward = !Forward };
}

/// <summary>Closely spaced tees with the secondary circuit from <c>secondaryOut</c> to <c>secondaryIn</c>.</summary>
internal sealed record SpacedTeesElement(
    DrawnItem Item,
    bool Forward,
    ImmutableArray<Element> Secondary
) : Element
{
    /// <inheritdoc/>
    public override Element Reversed() => this with { Forward = !Forward };
}

/// <summary>Branches between two tees.</summary>
internal sealed record ParallelElement(
    DrawnItem? Split,
    DrawnItem? Join,
    ImmutableArray<ImmutableArray<Element>> Branches
) : Element
{
    /// <inheritdoc/>
    public override Element Reversed() =>
        new ParallelElement(
            Join,
            Split,
            [.. Branches.Select(branch => CircuitFinder.Reverse(branch))]
        );
}

/// <summary>The heater's circuit, from its outlet round to its inlet.</summary>
internal sealed record HeaterCircuit(DrawnItem Heater, ImmutableArray<Element> Way);
