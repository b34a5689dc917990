namespace RubLab.Core.Brining;

/// <summary>Density of a salt solution.</summary>
/// <param name="SaltPercent">Sodium chloride by weight of the solution.</param>
/// <param name="At20CelsiusKilogramsPerCubicMetre">Density at 20 C.</param>
/// <param name="FallKilogramsPerCubicMetrePerCelsius">How much the density falls for each degree of warming.</param>
public readonly record struct SolutionDensity(
    double SaltPercent, double At20CelsiusKilogramsPerCubicMetre, double FallKilogramsPerCubicMetrePerCelsius);
