using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Core.Ingredients;

namespace RubLab.Contracts.Ingredients;

/// <summary>A bulk density with where it comes from.</summary>
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
            "reference",
            density.WidenedBy);
}
