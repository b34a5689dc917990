using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Salt;

/// <summary>Salt and sodium of one formula line, per kg green, that stay on or in the meat.</summary>
public sealed record LedgerEntryResponse(int Treatment, string Ingredient, string Form, QuantityBand Salt, QuantityBand Sodium);
