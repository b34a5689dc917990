using RubLab.Contracts.Quantities;
using RubLab.Core.Ingredients;

namespace RubLab.Contracts.Reference;

/// <summary>How a form flows, from its bulk and tapped densities.</summary>
/// <param name="Class">The flow class.</param>
/// <param name="CarrIndex">Compressibility index, percent.</param>
/// <param name="HausnerRatio">Tapped over bulk density.</param>
/// <param name="TappedDensity">The tapped density, g/mL.</param>
/// <param name="SourceId">Where the classes come from.</param>
public sealed record FlowResponse(string Class, double CarrIndex, double HausnerRatio, double TappedDensity, string SourceId)
{
    public static FlowResponse? From(IngredientForm form, IReadOnlyList<PowderFlow> classes) =>
        form is { TappedGramsPerMillilitre: { } tapped, Density.GramsPerMillilitre.Typical: var bulk }
        && PowderFlow.Of(bulk, tapped, classes) is { } flow
            ? new FlowResponse(
                flow.Name, Rounded.Estimate(PowderFlow.CarrPercent(bulk, tapped)), Rounded.Estimate(PowderFlow.Hausner(bulk, tapped)),
                tapped, flow.Citation.SourceId)
            : null;
}
