namespace RubLab.Contracts.Shopping;

/// <summary>A sum of money in whole smallest units of its currency.</summary>
/// <param name="Amount">A decimal number.</param>
/// <param name="Currency">Code of ISO 4217.</param>
public readonly record struct MoneyResponse(decimal Amount, string Currency);
