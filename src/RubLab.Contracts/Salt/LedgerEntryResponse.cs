using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Salt;

/// <summary>Salt and sodium of one formula line, per kg green, that stay on or in the meat.</summary>
/// <param name="Treatment">Index of the treatment as sent, from 0.</param>
/// <param name="Ingredient">Ingredient id.</param>
/// <param name="Form">Form id.</param>
/// <param name="Salt">Sodium chloride, per kg green.</param>
/// <param name="Sodium">Sodium, per kg green.</param>
public sealed record LedgerEntryResponse(int Treatment, string Ingredient, string Form, QuantityBand Salt, QuantityBand Sodium);
