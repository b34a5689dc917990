namespace RubLab.Contracts.Quantities;

/// <summary>A number with its unit, as sent.</summary>
/// <remarks>Settable, where other requests are init-only: a pile holds up to 300,000 of these, and the generated reader
/// fills settable members in place instead of boxing each value on its way to a constructor.</remarks>
public sealed record QuantityRequest
{
    /// <summary>A finite number.</summary>
    public double? Value { get; set; }

    /// <summary>A unit symbol; which ones fit depends on where the quantity stands.</summary>
    public string? Unit { get; set; }

    public static QuantityRequest Of(double value, string unit) => new() { Value = value, Unit = unit };
}
