using RubLab.Core.Sources;

namespace RubLab.Core.Ingredients;

/// <summary>A test sieve: the US number and the opening it stands for.</summary>
public sealed record Sieve(double UsMesh, double OpeningMicrometres, Citation Citation);
