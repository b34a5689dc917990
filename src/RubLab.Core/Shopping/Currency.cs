namespace RubLab.Core.Shopping;

/// <summary>A currency of ISO 4217.</summary>
/// <param name="Code">Three capital letters.</param>
/// <param name="MinorDigits">Decimal digits of its smallest unit: two for most, none for some.</param>
public sealed record Currency(string Code, int MinorDigits)
{
    /// <summary>An amount in whole smallest units, halves away from zero.</summary>
    public decimal Rounded(decimal amount) => decimal.Round(amount, MinorDigits, MidpointRounding.AwayFromZero);
}
