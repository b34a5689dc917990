namespace RubLab.Core.Scaling;

/// <summary>How long and how cold a soak lies, and in how much liquid.</summary>
/// <param name="Minutes">The time; none for until it is even.</param>
/// <param name="LiquidGrams">All of the liquid; none where the dose says how much there is.</param>
public sealed record SoakTerms(double? Minutes, double? LiquidGrams);
