using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Brining;

/// <summary>An amount of liquid.</summary>
/// <param name="Mass">Its weight.</param>
/// <param name="Volume">Its volume, estimated from the density of a salt solution of its strength.</param>
public sealed record LiquidResponse(Quantity Mass, Quantity Volume);
