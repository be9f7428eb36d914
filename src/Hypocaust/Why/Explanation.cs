using System.Collections.Immutable;
using Hypocaust.Quantities;

namespace Hypocaust.Why;

/// <summary>Why a computed number is what it is.</summary>
/// <param name="Path">Path of the number in the answer, for example <c>floor.loops[0].running.heatUpW</c>.</param>
/// <param name="Title">What the number is.</param>
/// <param name="Value">The number in SI.</param>
/// <param name="Shown">How it is shown.</param>
/// <param name="Formula">The formula in the symbols of the inputs.</param>
/// <param name="Inputs">What went into it.</param>
/// <param name="Source">Where the formula comes from.</param>
/// <param name="Remark">A plain sentence on accuracy or meaning; may be empty.</param>
public sealed record Explanation(
    string Path,
    string Title,
    double Value,
    Shown Shown,
    string Formula,
    ImmutableArray<ExplainedInput> Inputs,
    string Source,
    string Remark
);

/// <summary>One input of a formula.</summary>
/// <param name="Symbol">Its symbol in the formula.</param>
/// <param name="Meaning">What it is.</param>
/// <param name="Value">Its value in SI.</param>
/// <param name="Shown">How it is shown.</param>
public sealed record ExplainedInput(string Symbol, string Meaning, double Value, Shown Shown);

/// <summary>How strongly a number follows one value of the design.</summary>
/// <param name="DesignPath">Path of the value in the design.</param>
/// <param name="Written">The value as written or assumed.</param>
/// <param name="Step">The step that was tried, in words (<c>+1 %</c>, <c>+1 K</c>).</param>
/// <param name="Change">By how much the number changed, SI.</param>
public sealed record Sensitivity(string DesignPath, string Written, string Step, double Change);
