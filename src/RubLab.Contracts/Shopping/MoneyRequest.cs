namespace RubLab.Contracts.Shopping;

/// <summary>A sum of money; all sums of a request are in one currency.</summary>
public sealed record MoneyRequest
{
    /// <summary>A decimal number, not below zero.</summary>
    public decimal? Amount { get; init; }

    /// <summary>Code of ISO 4217.</summary>
    public string? Currency { get; init; }
}
