using RubLab.Contracts.Quantities;
using RubLab.Contracts.Scaling;

namespace RubLab.Contracts.Salt;

/// <summary>A stack of treatments and the kind of meat it is for: one pile line, weights not needed.</summary>
public sealed record SaltCheckRequest
{
    /// <summary>Exactly one line.</summary>
    public IReadOnlyList<PileLineRequest?>? Pile { get; init; }

    public IReadOnlyList<TreatmentRequest?>? Treatments { get; init; }

    public QuantityRequest? Portion { get; init; }
}
