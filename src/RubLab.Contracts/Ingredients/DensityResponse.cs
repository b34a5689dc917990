using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Core.Ingredients;

namespace RubLab.Contracts.Ingredients;

/// <summary>A bulk density with where it comes from.</summary>
/// <param name="Low">Loosely filled or coarse.</param>
/// <param name="Typical">The figure that is counted with.</param>
/// <param name="High">Packed or fine.</param>
/// <param name="Unit">Always g/mL.</param>
/// <param name="SourceId">Id of the source.</param>
/// <param name="Locator">Where in the source.</param>
/// <param name="Confidence">How far the figure can be trusted.</param>
/// <param name="Origin">reference: from the reference data.</param>
/// <param name="WidenedBy">What dominates the width of the band.</param>
public sealed record DensityResponse(
    double Low, double Typical, double High, string Unit, string SourceId, string Locator, string Confidence, string Origin, string WidenedBy)
{
    public static DensityResponse? From(BulkDensity? density) => density is null
        ? null
        : new DensityResponse(
            Rounded.Estimate(density.GramsPerMillilitre.Low),
            Rounded.Estimate(density.GramsPerMillilitre.Typical),
            Rounded.Estimate(density.GramsPerMillilitre.High),
            "g/mL",
            density.Citation.SourceId,
            density.Citation.Locator,
            Vocabulary.Confidences[density.Citation.Confidence],
            density.IsOwn ? "kitchen" : "reference",
            density.WidenedBy);
}
