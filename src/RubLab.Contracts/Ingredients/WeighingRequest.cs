using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Ingredients;

/// <summary>One filling of a measure, level, put on the scale.</summary>
public sealed record WeighingRequest
{
    /// <summary>The measure.</summary>
    public QuantityRequest? Volume { get; init; }

    /// <summary>What it held.</summary>
    public QuantityRequest? Weight { get; init; }
}
