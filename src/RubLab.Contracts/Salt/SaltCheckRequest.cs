using RubLab.Contracts.Quantities;
using RubLab.Contracts.Scaling;

namespace RubLab.Contracts.Salt;

/// <summary>A stack of treatments and the kind of meat it is for: one pile line, weights not needed.</summary>
public sealed record SaltCheckRequest
{
    /// <summary>Exactly one line.</summary>
    public IReadOnlyList<PileLineRequest?>? Pile { get; init; }

    /// <summary>What goes on it, in order.</summary>
    public IReadOnlyList<TreatmentRequest?>? Treatments { get; init; }

    /// <summary>One portion of cooked meat, for sodium per portion.</summary>
    public QuantityRequest? Portion { get; init; }
}
