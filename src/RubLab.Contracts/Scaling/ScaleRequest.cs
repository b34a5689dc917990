using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Scaling;

/// <summary>One of the kitchen's scales.</summary>
public sealed record ScaleRequest
{
    /// <summary>The most it takes; without a limit if left out.</summary>
    public QuantityRequest? Capacity { get; init; }

    /// <summary>The smallest difference it shows.</summary>
    public QuantityRequest? Step { get; init; }
}
