using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Sauces;

/// <summary>The sodium of one serving of sauce.</summary>
/// <param name="Id">Which reference amount; absent for the portion that was asked for.</param>
/// <param name="Name">The kind of food it is for.</param>
/// <param name="Amount">How much, as its source gives it.</param>
/// <param name="Weight">What that weighs.</param>
/// <param name="Sodium">Sodium in it.</param>
/// <param name="SourceId">Where the reference amount comes from.</param>
/// <param name="Locator">Where in that source.</param>
public sealed record SauceServingResponse(
    string? Id, string? Name, Quantity Amount, QuantityBand Weight, QuantityBand Sodium, string? SourceId, string? Locator);
