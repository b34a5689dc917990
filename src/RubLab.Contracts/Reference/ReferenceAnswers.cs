using RubLab.Contracts.Ingredients;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Core.Catalogues;
using RubLab.Core.Curing;
using RubLab.Core.Ingredients;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Sources;

namespace RubLab.Contracts.Reference;

/// <summary>Writes the reference data in the words of the wire.</summary>
public static class ReferenceAnswers
{
    public static IReadOnlyList<UnitResponse> Units() => UnitTable.All.Select(u => new UnitResponse(
        u.Symbol, u.Name, Vocabulary.Dimensions[u.Dimension], u.Factor, u.Offset, BaseUnitOf(u.Dimension), u.Definition)).ToList();

    public static SourceResponse From(Source source) => new(
        source.Id, source.Title, source.Publisher, source.Edition, source.Provenance,
        Vocabulary.Confidences[source.Confidence], source.Note);

    public static IngredientSummary Summary(Ingredient ingredient) =>
        new(ingredient.Id, ingredient.Name, ingredient.Group, ingredient.Forms.Select(f => f.Id).ToList());

    public static IngredientResponse From(Ingredient ingredient, Catalogue catalogue) => new()
    {
        Id = ingredient.Id,
        Name = ingredient.Name,
        Group = ingredient.Group,
        SodiumMilligramsPer100Grams = ingredient.SodiumMilligramsPer100Grams,
        Salt = QuantityBand.From(ingredient.SaltGramsPer100Grams, "%", Rounded.Exact),
        SaltMethod = ingredient.SaltMethod,
        WaterGramsPer100Grams = ingredient.WaterGramsPer100Grams,
        SugarsGramsPer100Grams = ingredient.SugarsGramsPer100Grams,
        Allergens = ingredient.Allergens,
        ReadYourLabel = ingredient.IsGenericCompound,
        LimitedAdditives = LimitedOf(ingredient).OrderBy(l => l.Additive, StringComparer.Ordinal).ToList(),
        SourceId = ingredient.Citation.SourceId,
        Locator = ingredient.Citation.Locator,
        Forms = ingredient.Forms.Select(f => new FormResponse
        {
            Id = f.Id,
            Name = f.Name,
            IsDefault = f.IsDefault,
            Density = DensityResponse.From(f.Density),
            SizeLowMicrometres = f.SizeLowMicrometres,
            SizeHighMicrometres = f.SizeHighMicrometres,
            Flow = FlowResponse.From(f, catalogue.PowderFlows),
        }).ToList(),
        Measures = ingredient.Measures.Select(m => new MeasureResponse(
            m.FormId, new Quantity(m.Amount, m.Unit.Symbol), new Quantity(m.WeightGrams, "g"), m.Citation.SourceId, m.Citation.Locator)).ToList(),
        PieceMeasures = ingredient.PieceMeasures.Select(m => new PieceMeasureResponse(
            m.Amount, m.Measure, new Quantity(m.WeightGrams, "g"), m.Citation.SourceId, m.Citation.Locator)).ToList(),
    };

    public static CutSummary Summary(Cut cut) => new(cut.Id, cut.Name, cut.Species, cut.Class);

    public static CutResponse From(Cut cut, Catalogue catalogue) => new()
    {
        Id = cut.Id,
        Name = cut.Name,
        Species = cut.Species,
        Sodium = cut.Composition is { } c ? FigureResponse.From(Band.Exact(c.SodiumMilligramsPer100Grams), "mg", c.Citation) : null,
        Water = cut.Composition is { WaterGramsPer100Grams: { } water } w ? FigureResponse.From(Band.Exact(water), "%", w.Citation) : null,
        TrimLoss = cut.TrimLossPercent is { } trim ? FigureResponse.From(trim.Band, "%", trim.Citation) : null,
        CookYields = cut.CookYields.Select(FigureResponse.From).ToList(),
        KeptInCooking = cut.KeptInCookingPercent is { } kept ? FigureResponse.From(kept.Band, "%", kept.Citation) : null,
        SaltRanges = catalogue.SaltRanges.Where(r => cut.SaltProducts.Contains(r.AppliesTo)).Select(r => r.Id).ToList(),
        SourceId = cut.Citation.SourceId,
        Locator = cut.Citation.Locator,
    };

    private static IEnumerable<LimitedAdditiveResponse> LimitedOf(Ingredient ingredient)
    {
        foreach (var (additive, grams) in ingredient.LimitedGramsPer100Grams)
        {
            yield return new LimitedAdditiveResponse(additive, grams);
        }

        if (ingredient.NitriteGramsPer100Grams is > 0 and var nitrite)
        {
            yield return new LimitedAdditiveResponse(AdditiveLoads.Nitrite, nitrite);
        }

        if (ingredient.NitrateGramsPer100Grams is > 0 and var nitrate)
        {
            yield return new LimitedAdditiveResponse(AdditiveLoads.Nitrate, nitrate);
        }
    }

    private static string BaseUnitOf(Dimension dimension) => UnitTable.All.First(u => u.Dimension == dimension && u is { Factor: 1, Offset: 0 }).Symbol;
}
