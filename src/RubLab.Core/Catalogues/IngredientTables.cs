using RubLab.Core.Curing;
using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;
using RubLab.Core.Sources;

namespace RubLab.Core.Catalogues;

/// <summary>Reads ingredients, their forms, household measures and weights of pieces, and the sieve table.</summary>
internal static class IngredientTables
{
    public static List<Ingredient> Read(IReadOnlyDictionary<string, string> files, Constants constants)
    {
        var measures = SeedTable.Read(files, "measures.csv").Rows
            .ToLookup(row => row.Required("ingredient_id"), ReadMeasure, StringComparer.Ordinal);
        var pieces = SeedTable.Read(files, "piece-measures.csv").Rows
            .ToLookup(row => row.Required("ingredient_id"), ReadPiece, StringComparer.Ordinal);
        var forms = SeedTable.Read(files, "forms.csv").Rows
            .ToLookup(row => row.Required("ingredient_id"), StringComparer.Ordinal);
        var additives = SeedTable.Read(files, "additive-contents.csv").Rows
            .ToLookup(row => row.Required("ingredient_id"), StringComparer.Ordinal);
        return SeedTable.Read(files, "ingredients.csv").Rows.ConvertAll(row =>
        {
            var id = row.Required("ingredient_id");
            var own = measures[id].ToList();
            var ingredient = new Ingredient
            {
                Id = id,
                Name = row.Required("name"),
                Group = row.Required("group"),
                SodiumMilligramsPer100Grams = row.Number("sodium_mg_per_100g"),
                SaltGramsPer100Grams = row.Band("salt", "_g_per_100g"),
                SaltConfidence = row.Confidence("salt_confidence"),
                SaltMethod = row.Required("salt_method"),
                WaterGramsPer100Grams = row.OptionalNumber("water_g_per_100g"),
                SugarsGramsPer100Grams = row.OptionalNumber("sugars_g_per_100g"),
                FatGramsPer100Grams = row.OptionalNumber("fat_g_per_100g"),
                LimitedGramsPer100Grams = additives[id].Where(a => a.Required("additive") is not (AdditiveLoads.Nitrite or AdditiveLoads.Nitrate))
                    .ToDictionary(a => a.Required("additive"), a => a.Positive("content_g_per_100g"), StringComparer.Ordinal),
                OwnPerSodiumNitrite = OwnPerSodiumSalt(AdditiveLoads.Nitrite, "sodium_nitrite_g_per_100g"),
                OwnPerSodiumNitrate = OwnPerSodiumSalt(AdditiveLoads.Nitrate, "sodium_nitrate_g_per_100g"),
                NitriteGramsPer100Grams = row.OptionalNumber("sodium_nitrite_g_per_100g"),
                NitrateGramsPer100Grams = row.OptionalNumber("sodium_nitrate_g_per_100g"),
                Allergens = row.Words("allergens"),
                IsGenericCompound = row.Flag("generic_compound"),
                Citation = row.Citation(Confidence.High),
                Forms = forms[id].Select(form => ReadForm(form, own, constants)).ToList(),
                Measures = own,
                PieceMeasures = pieces[id].ToList(),
            };
            return ingredient.Forms.Count(f => f.IsDefault) == 1
                ? ingredient
                : throw row.Wrong("ingredient_id", $"{id} must have exactly one default form");

            double OwnPerSodiumSalt(string additive, string column) =>
                additives[id].FirstOrDefault(a => a.Required("additive") == additive) is { } listed ? listed.Positive("content_g_per_100g") / row.Positive(column) : 1;
        });
    }

    public static List<Sieve> ReadSieves(IReadOnlyDictionary<string, string> files) =>
        SeedTable.Read(files, "sieves.csv").Rows.ConvertAll(row =>
            new Sieve(row.Number("us_mesh"), row.Number("opening_um"), row.Citation(Confidence.High)));

    public static List<PowderFlow> ReadFlow(IReadOnlyDictionary<string, string> files) =>
        SeedTable.Read(files, "powder-flow.csv").Rows.ConvertAll(row => new PowderFlow(
            row.Required("class_id"), row.Required("name"), row.Number("carr_decided_low_percent"), row.Number("carr_decided_high_percent"),
            row.Citation()));

    private static HouseholdMeasure ReadMeasure(SeedRow row) =>
        new(
            (int)row.Number("sequence"),
            row.Required("form_id"),
            row.Number("amount"),
            UnitTable.TryFind(row.Required("unit"), out var unit) && unit.Dimension == Dimension.Volume
                ? unit
                : throw row.Wrong("unit", "is not a unit of volume"),
            row.Number("weight_g"),
            row.Number("weight_rounding_g"),
            row.Citation(Confidence.High));

    private static PieceMeasure ReadPiece(SeedRow row) =>
        new(
            (int)row.Number("sequence"),
            row.Positive("amount"),
            row.Required("measure"),
            row.Positive("weight_g"),
            row.Citation(Confidence.High));

    private static IngredientForm ReadForm(SeedRow row, List<HouseholdMeasure> measures, Constants constants)
    {
        var id = row.Required("form_id");
        return new IngredientForm(
            id,
            row.Required("name"),
            row.Flag("is_default"),
            ReadDensity(row, id, measures, row.Flag("fills_level") ? 0 : constants.SpoonFillingSpreadPercent),
            row.OptionalNumber("size_low_um"),
            row.OptionalNumber("size_high_um"))
        {
            TappedGramsPerMillilitre = row.OptionalNumber("tapped_g_per_ml"),
            FillsLevel = row.Flag("fills_level"),
        };
    }

    private static BulkDensity? ReadDensity(SeedRow row, string formId, List<HouseholdMeasure> measures, double fillingPercent)
    {
        if (row.OptionalNumber("measure_sequence") is { } sequence)
        {
            var measure = measures.Find(m => m.Sequence == (int)sequence && m.FormId == formId)
                ?? throw row.Wrong("measure_sequence", "names no measure of this form");
            return FromMeasure(measure, measures, row.Citation(), fillingPercent);
        }

        if (row.OptionalNumber("density_typical_g_per_ml") is null)
        {
            return null;
        }

        var band = row.Band("density", "_g_per_ml");
        var filled = Band.Around(band.Typical, fillingPercent);
        return filled.Low < band.Low && filled.High > band.High
            ? new BulkDensity(filled, row.Citation(), "filling")
            : new BulkDensity(band.Spanning(filled), row.Citation(), row.Required("band_from"));
    }

    // The band holds what the printed rounding allows, what the source's other measures of the same form give,
    // and what filling a spoon adds, a thin liquid nothing; the widest of the three gives it its width.
    private static BulkDensity FromMeasure(HouseholdMeasure measure, List<HouseholdMeasure> all, Citation citation, double fillingPercent)
    {
        var typical = measure.GramsPerMillilitre;
        var rounding = measure.RoundingGrams / measure.WeightGrams;
        var others = all.Where(m => m.FormId == measure.FormId)
            .Max(m => Math.Abs((m.GramsPerMillilitre / typical) - 1));
        var filling = fillingPercent / 100;
        var width = Math.Max(filling, Math.Max(rounding, others));
        var cause = width == filling ? "filling" : width == rounding ? "rounding" : "measures";
        return new BulkDensity(Band.Around(typical, width * 100), citation, cause);
    }
}
