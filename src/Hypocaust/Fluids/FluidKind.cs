namespace Hypocaust.Fluids;

/// <summary>What is mixed into the water of the system.</summary>
public enum FluidKind
{
    /// <summary>Plain water.</summary>
    Water,

    /// <summary>Water with propylene glycol (propane-1,2-diol), of low toxicity.</summary>
    PropyleneGlycol,

    /// <summary>Water with ethylene glycol (ethane-1,2-diol), poisonous when swallowed.</summary>
    EthyleneGlycol,
}
