using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Formulas;

/// <summary>What a formula comes to.</summary>
/// <param name="TotalRatio">The whole formula per base.</param>
/// <param name="SaltRatio">Sodium chloride per base.</param>
/// <param name="SaltShare">Sodium chloride, percent of the formula.</param>
public sealed record MixFigures(Quantity TotalRatio, QuantityBand SaltRatio, QuantityBand SaltShare);
