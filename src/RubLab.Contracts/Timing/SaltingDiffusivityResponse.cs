using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Timing;

/// <summary>The diffusivity that was taken.</summary>
public sealed record SaltingDiffusivityResponse
{
    public required QuantityBand Value { get; init; }

    /// <summary>Where it holds; absent where it was taken for every stage as it is.</summary>
    public Quantity? Temperature { get; init; }

    /// <summary>The animal it was measured on; absent where it was given.</summary>
    public string? MeasuredOn { get; init; }

    /// <summary>Id of the source; absent where it was given.</summary>
    public string? SourceId { get; init; }

    /// <summary>Where in the source; absent where it was given.</summary>
    public string? Locator { get; init; }

    /// <summary>How far the figure can be trusted; absent where it was given.</summary>
    public string? Confidence { get; init; }
}
