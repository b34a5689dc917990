using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reference;

namespace RubLab.Contracts.Serving;

/// <summary>The same purchase reckoned by a published yield straight from purchase weight.</summary>
/// <param name="Yield">Edible of purchase weight.</param>
/// <param name="PurchaseWeight">What it would take, not rounded.</param>
public sealed record CrossCheckResponse(FigureResponse Yield, QuantityBand PurchaseWeight);
