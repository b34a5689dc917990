namespace RubLab.Contracts.Quantities;

/// <summary>A figure the sender knows exactly (<c>value</c>) or as a band (<c>low</c>, <c>typical</c>, <c>high</c>).</summary>
public sealed record EstimateRequest
{
    public double? Value { get; init; }

    public double? Low { get; init; }

    public double? Typical { get; init; }

    public double? High { get; init; }

    public string? Unit { get; init; }
}
