using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Brining;

/// <summary>One piece of an injection.</summary>
/// <param name="Number">Counted as sent, from 1.</param>
/// <param name="GreenWeight">What it weighed before.</param>
/// <param name="TargetWeight">What the scale shows when enough is in it, before any drains.</param>
/// <param name="DrainedWeight">What it weighs after draining.</param>
public sealed record BrinePieceResponse(int Number, Quantity GreenWeight, Quantity TargetWeight, QuantityBand DrainedWeight);
