using RubLab.Core.Quantities;
using RubLab.Core.Sources;

namespace RubLab.Core.Meat;

/// <summary>Cooked weight as a percentage of green weight for one way of cooking.</summary>
public sealed record CookYield(string Method, bool IsDefault, Band Percent, Citation Citation);
