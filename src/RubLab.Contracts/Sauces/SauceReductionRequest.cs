using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Sauces;

/// <summary>How far a sauce is boiled down: exactly one of the members.</summary>
public sealed record SauceReductionRequest
{
    /// <summary>Weight left, percent of what goes into the pot.</summary>
    public QuantityRequest? Left { get; init; }

    /// <summary>All but water, percent of the finished sauce.</summary>
    public QuantityRequest? Solids { get; init; }

    /// <summary>Sodium chloride, percent of the finished sauce.</summary>
    public QuantityRequest? Salt { get; init; }
}
