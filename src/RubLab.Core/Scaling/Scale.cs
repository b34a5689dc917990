namespace RubLab.Core.Scaling;

/// <summary>One of a kitchen's scales.</summary>
/// <param name="CapacityGrams">The most it takes.</param>
/// <param name="Step">The smallest difference it shows.</param>
public sealed record Scale(double CapacityGrams, WeighingStep Step);
