using RubLab.Core.Sources;

namespace RubLab.Core.Yields;

/// <summary>A published yield straight from purchase weight to cooked edible meat.</summary>
/// <param name="Method">Way of cooking; none where the source names none.</param>
/// <param name="Percent">Cooked edible meat, percent of purchase weight.</param>
/// <param name="IsWithoutSkin">The skin is not counted as edible.</param>
/// <param name="Citation">Where this comes from.</param>
public sealed record PurchaseYield(string? Method, double Percent, bool IsWithoutSkin, Citation Citation);
