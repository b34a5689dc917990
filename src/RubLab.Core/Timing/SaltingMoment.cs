using RubLab.Core.Quantities;

namespace RubLab.Core.Timing;

/// <summary>How far the salt has got at one hour.</summary>
/// <param name="Hours">From the start.</param>
/// <param name="UptakeFraction">The salt in the meat over the salt in it once even, 0 to 1.</param>
/// <param name="CentreToMean">The salt of the middle over the mean of the piece at that hour, 0 to 1.</param>
public sealed record SaltingMoment(double Hours, Band UptakeFraction, Band CentreToMean);
