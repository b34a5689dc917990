namespace RubLab.Contracts.Quantities;

/// <summary>A number with its unit, as sent.</summary>
public sealed record QuantityRequest
{
    public double? Value { get; init; }

    public string? Unit { get; init; }

    public static QuantityRequest Of(double value, string unit) => new() { Value = value, Unit = unit };
}
