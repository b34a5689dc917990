using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Sauces;

/// <summary>One ingredient of the pot.</summary>
/// <param name="Ingredient">Ingredient id.</param>
/// <param name="Form">Form id.</param>
/// <param name="IntoPot">What goes into the pot.</param>
/// <param name="Share">Percent of the pot.</param>
/// <param name="Salt">Sodium chloride it brings to a kg of finished sauce.</param>
public sealed record SauceLineResponse(string Ingredient, string Form, Quantity IntoPot, QuantityBand Share, QuantityBand Salt);
