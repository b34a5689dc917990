namespace RubLab.Contracts.Quantities;

/// <summary>A figure the sender knows exactly (<c>value</c>) or as a band (<c>low</c>, <c>typical</c>, <c>high</c>).</summary>
public sealed record EstimateRequest
{
    /// <summary>The exact figure; instead of a band.</summary>
    public double? Value { get; init; }

    /// <summary>The low end of the band.</summary>
    public double? Low { get; init; }

    /// <summary>Its most likely value.</summary>
    public double? Typical { get; init; }

    /// <summary>The high end of the band.</summary>
    public double? High { get; init; }

    /// <summary>Percent.</summary>
    public string? Unit { get; init; }
}
