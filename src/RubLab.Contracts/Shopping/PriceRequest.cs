using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Shopping;

/// <summary>A price; all prices of a request are in one currency.</summary>
public sealed record PriceRequest
{
    /// <summary>A decimal number, not below zero.</summary>
    public decimal? Amount { get; init; }

    /// <summary>Code of ISO 4217.</summary>
    public string? Currency { get; init; }

    /// <summary>For so much weight; for one piece if left out.</summary>
    public QuantityRequest? Per { get; init; }
}
