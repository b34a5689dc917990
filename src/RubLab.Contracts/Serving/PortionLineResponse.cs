using RubLab.Contracts.Quantities;
using RubLab.Contracts.Yields;

namespace RubLab.Contracts.Serving;

/// <summary>What one line of a pile comes to.</summary>
public sealed record PortionLineResponse
{
    /// <summary>The pile line's id.</summary>
    public required string Id { get; init; }

    /// <summary>Cut id.</summary>
    public required string Cut { get; init; }

    /// <summary>How many pieces.</summary>
    public required int Pieces { get; init; }

    /// <summary>As weighed.</summary>
    public required Quantity Weight { get; init; }

    /// <summary>Whether that is green or purchase weight.</summary>
    public required string WeightIs { get; init; }

    /// <summary>Cooked weight, with bone; absent where the yield skips it.</summary>
    public QuantityBand? Cooked { get; init; }

    /// <summary>Cooked meat without bone.</summary>
    public required QuantityBand Edible { get; init; }

    /// <summary>One portion.</summary>
    public required Quantity Portion { get; init; }

    /// <summary>Whole portions, rounded down.</summary>
    public required CountBand Portions { get; init; }

    /// <summary>What the reckoning stands on; percentages are of the weight as weighed.</summary>
    public required YieldUsedResponse Yield { get; init; }
}
