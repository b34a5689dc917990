using RubLab.Core.Quantities;
using RubLab.Core.Sources;

namespace RubLab.Core.Catalogues;

/// <summary>Reads <c>sources.csv</c> and <c>constants.csv</c>.</summary>
internal static class SourceTables
{
    public static List<Source> ReadSources(IReadOnlyDictionary<string, string> files) =>
        SeedTable.Read(files, "sources.csv").Rows.ConvertAll(row => new Source(
            row.Required("source_id"), row.Required("title"), row.Text("publisher"), row.Text("edition"),
            row.Required("provenance"), row.Confidence(), row.Text("note")));

    public static Constants ReadConstants(IReadOnlyDictionary<string, string> files)
    {
        var rows = SeedTable.Read(files, "constants.csv").Rows.ToDictionary(row => row.Required("constant_id"), StringComparer.Ordinal);
        return new Constants
        {
            SodiumInSodiumChlorideGramsPerGram = Of("sodium-in-sodium-chloride-g-per-g"),
            SpoonFillingSpreadPercent = Of("spoon-filling-spread-percent"),
            FormSpreadAsksPercent = Of("form-spread-asks-percent"),
            CoarseStepPercent = Of("coarse-step-percent"),
            PremixBatchesMost = Of("premix-batches-most"),
            RawMeatDensityKilogramsPerCubicMetre = Of("raw-meat-density-kg-per-m3"),
            CookYieldSpread = new Cited(Band.Exact(Of("cook-yield-spread-points")), Row("cook-yield-spread-points").Citation()),
            LayerGrainsMonolayer = Of("layer-grains-monolayer"),
            LayerGrainsBinder = Of("layer-grains-binder"),
            SeparatesSizeRatio = Of("separates-size-ratio"),
            CoverageSpreadPercent = Of("coverage-spread-percent"),
            SugarScorchTemperatureCelsius = Of("sugar-scorch-temperature-c"),
            SugarScorchSourceId = Row("sugar-scorch-temperature-c").Required("source_id"),
            SugarScorchSharePercent = Of("sugar-scorch-share-percent"),
            CureStepPercent = Of("cure-step-percent"),
            PotassiumPerSodiumNitrite = Of("potassium-nitrite-molar-mass") / Of("sodium-nitrite-molar-mass"),
            SodiumInSodiumNitriteGramsPerGram = Of("sodium-in-sodium-nitrite-g-per-g"),
            SodiumInSodiumNitrateGramsPerGram = Of("sodium-in-sodium-nitrate-g-per-g"),
            SauceDensityGramsPerMillilitre = new Cited(
                new Band(Of("sauce-density-low-g-per-ml"), Of("sauce-density-typical-g-per-ml"), Of("sauce-density-high-g-per-ml")),
                Row("sauce-density-typical-g-per-ml").Citation()),
            OwnYieldFullCount = (int)Of("own-yield-full-count"),
            OwnYieldSpreadPercent = Of("own-yield-spread-percent"),
            BuyingGuideStep = Of("buying-guide-step"),
        };

        double Of(string id) => Row(id).Number("value");

        SeedRow Row(string id) => rows.TryGetValue(id, out var row) ? row : throw new InvalidDataException($"constants.csv has no {id}.");
    }
}
