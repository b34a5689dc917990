namespace RubLab.Core.Brining;

/// <summary>How much salt a solution holds at a temperature.</summary>
/// <param name="Celsius">The temperature.</param>
/// <param name="SaturatedPercent">Sodium chloride by weight of the saturated solution.</param>
public readonly record struct Solubility(double Celsius, double SaturatedPercent);
