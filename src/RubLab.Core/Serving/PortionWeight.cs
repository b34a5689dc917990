using RubLab.Core.Sources;

namespace RubLab.Core.Serving;

/// <summary>Cooked edible meat for one guest, without bone.</summary>
/// <param name="Appetite">The word for how much the guest eats.</param>
/// <param name="Name">Its name.</param>
/// <param name="Grams">The portion.</param>
/// <param name="Citation">Where this comes from.</param>
public sealed record PortionWeight(string Appetite, string Name, double Grams, Citation Citation);
