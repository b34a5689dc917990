using RubLab.Core.Sources;

namespace RubLab.Core.Timing;

/// <summary>Viscosity of water at a temperature.</summary>
public sealed record WaterViscosity(double TemperatureCelsius, double MillipascalSeconds, Citation Citation);
