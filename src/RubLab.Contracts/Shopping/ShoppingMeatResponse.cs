using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Shopping;

/// <summary>What to buy of one cut.</summary>
/// <param name="Cut">Cut id.</param>
/// <param name="Pieces">Whole pieces, of all plans; absent for meat bought by weight.</param>
/// <param name="PurchaseWeight">Of all plans.</param>
/// <param name="Outlay">What it costs; absent without a price.</param>
public sealed record ShoppingMeatResponse(string Cut, long? Pieces, Quantity PurchaseWeight, MoneyResponse? Outlay);
