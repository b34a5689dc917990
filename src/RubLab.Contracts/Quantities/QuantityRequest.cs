namespace RubLab.Contracts.Quantities;

/// <summary>A number with its unit, as sent.</summary>
public sealed record QuantityRequest
{
    /// <summary>A finite number.</summary>
    public double? Value { get; init; }

    /// <summary>A unit symbol; which ones fit depends on where the quantity stands.</summary>
    public string? Unit { get; init; }

    public static QuantityRequest Of(double value, string unit) => new() { Value = value, Unit = unit };
}
