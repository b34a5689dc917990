namespace RubLab.Core.Timing;

/// <summary>A time the meat spends at one temperature with the salt or the liquid on it.</summary>
/// <param name="TemperatureCelsius">Of the meat.</param>
/// <param name="Hours">Zero or more.</param>
public sealed record SaltingStage(double TemperatureCelsius, double Hours);
