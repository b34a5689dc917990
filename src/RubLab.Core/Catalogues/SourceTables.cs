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
            RawMeatDensityKilogramsPerCubicMetre = Of("raw-meat-density-kg-per-m3"),
            LayerGrainsMonolayer = Of("layer-grains-monolayer"),
            LayerGrainsBinder = Of("layer-grains-binder"),
            SeparatesSizeRatio = Of("separates-size-ratio"),
            CoverageSpreadPercent = Of("coverage-spread-percent"),
            SugarScorchTemperatureCelsius = Of("sugar-scorch-temperature-c"),
            SugarScorchSourceId = Row("sugar-scorch-temperature-c").Required("source_id"),
            SugarScorchSharePercent = Of("sugar-scorch-share-percent"),
        };

        double Of(string id) => Row(id).Number("value");

        SeedRow Row(string id) => rows.TryGetValue(id, out var row) ? row : throw new InvalidDataException($"constants.csv has no {id}.");
    }
}
