using RubLab.Core.Quantities;
using RubLab.Core.Sources;

namespace RubLab.Core.Meat;

/// <summary>What is left of raw meat after one way of cooking.</summary>
/// <param name="Method">The way of cooking.</param>
/// <param name="IsDefault">Whether it is taken when no way is named.</param>
/// <param name="Percent">Cooked over raw, percent, on the basis it was published for.</param>
/// <param name="Basis">The whole piece, or the meat alone.</param>
/// <param name="Citation">Where the figure comes from.</param>
/// <param name="WidthCitation">Where the width of the band comes from, where the figure has none of its own.</param>
public sealed record CookYield(
    string Method, bool IsDefault, Band Percent, YieldBasis Basis, Citation Citation, Citation? WidthCitation)
{
    /// <summary>Cooked over green weight of a whole piece, percent.</summary>
    /// <param name="boneFraction">Bone in the green weight, 0 to 1. Bone is taken to lose nothing in cooking.</param>
    public Band PercentOfGreen(double boneFraction) => Basis == YieldBasis.Green
        ? Percent
        : Percent.Times(1 - boneFraction).Plus(Band.Exact(boneFraction * 100));
}
