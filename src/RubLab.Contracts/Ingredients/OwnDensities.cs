using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;

namespace RubLab.Contracts.Ingredients;

/// <summary>Reads and writes the densities a kitchen weighs itself.</summary>
public static class OwnDensities
{
    private const int MostWeighings = 50;

    /// <summary>The lightest and densest a kitchen powder or liquid can plausibly be.</summary>
    private static readonly Bounds Plausible = new(0.02, 3, true, "g/mL");

    private static readonly Bounds VolumeMillilitres = new(0.5, 20_000, true, "mL");
    private static readonly Bounds WeightGrams = new(0.01, 50_000, true, "g");

    /// <summary>The density of some fillings.</summary>
    public static Result<OwnDensity> Check(OwnDensityRequest request, Catalogue catalogue)
    {
        var log = new FaultLog();
        var at = log.Root.At("weighings");
        var weighings = request.Weighings;
        if (!Listed.Holds(weighings, MostWeighings, "weighing", "weighings", at))
        {
            return log.ResultOf<OwnDensity>(null);
        }

        var weights = new double[weighings.Count];
        var volumes = new double[weighings.Count];
        for (var i = 0; i < weights.Length; i++)
        {
            if (weighings[i] is not { } weighing)
            {
                Reader.Missing(at.At(i));
                continue;
            }

            var volume = Reader.Amount(weighing.Volume, at.At(i).At("volume"), VolumeMillilitres, isRequired: true, Dimension.Volume);
            var weight = Reader.Amount(weighing.Weight, at.At(i).At("weight"), WeightGrams, isRequired: true, Dimension.Mass);
            if (volume is { } v && weight is { } w && Reader.Within(w / v, Plausible, at.At(i)) is not null)
            {
                (weights[i], volumes[i]) = (w, v);
            }
        }

        return log.ResultOf(log.IsClean ? OwnDensity.From(weights, volumes, catalogue.Constants.SpoonFillingSpreadPercent) : null);
    }

    /// <summary>The answer for a stored density of a form.</summary>
    public static OwnDensityResponse From(
        OwnDensity density, OwnDensityRequest request, Ingredient ingredient, IngredientForm form, long revision, string updatedAt)
    {
        var bulk = density.AsBulkDensity(form.Density is { IsOwn: false } reference ? reference : null);
        var before = form.Density is { IsOwn: true } own ? own.ReferenceGramsPerMillilitre : form.Density?.GramsPerMillilitre.Typical;
        return new OwnDensityResponse
        {
            Ingredient = ingredient.Id,
            Form = form.Id,
            Revision = revision,
            Density = DensityResponse.From(bulk)!,
            Count = density.Count,
            SpreadPercent = density.SpreadPercent is { } spread ? Rounded.Estimate(spread) : null,
            Reference = before is { } known ? Rounded.Estimate(known) : null,
            Weighings = request.Weighings!.Select(w => new WeighingResponse(
                new Quantity(w!.Volume!.Value!.Value, w.Volume.Unit!), new Quantity(w.Weight!.Value!.Value, w.Weight.Unit!))).ToList(),
            UpdatedAt = updatedAt,
        };
    }
}
