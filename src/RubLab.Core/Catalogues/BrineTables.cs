using RubLab.Core.Brining;
using RubLab.Core.Quantities;

namespace RubLab.Core.Catalogues;

/// <summary>Reads the densities and solubilities of salt and the single figures of brines.</summary>
internal static class BrineTables
{
    public static BrineFigures Read(IReadOnlyDictionary<string, string> files)
    {
        var rows = SeedTable.Read(files, "constants.csv").Rows.ToDictionary(row => row.Required("constant_id"), StringComparer.Ordinal);
        var densities = SeedTable.Read(files, "salt-solutions.csv").Rows.ConvertAll(row => new SolutionDensity(
            row.Number("salt_percent"), row.Number("density_20c_kg_per_m3"), row.Number("density_change_kg_per_m3_per_c")));
        var solubilities = SeedTable.Read(files, "salt-solubilities.csv").Rows.ConvertAll(row => new Solubility(
            row.Number("temperature_c"), row.Number("saturated_percent")));
        return new BrineFigures
        {
            Solution = new SaltSolution(densities, solubilities, Of("salometer-full-percent")),
            DissolvedMillilitresPerGram = Of("dissolved-solids-ml-per-g"),
            AssumedCelsius = Of("brine-temperature-c"),
            ColdHoldingCelsius = Of("cold-holding-temperature-c"),
            ColdHoldingSourceId = rows["cold-holding-temperature-c"].Required("source_id"),
            HighestWorkedPumpPercent = Of("highest-worked-pump-percent"),
            HighestWorkedPumpSourceId = rows["highest-worked-pump-percent"].Required("source_id"),
            StackedFilledPercent = new Band(
                Of("stacked-pieces-filled-low-percent"), Of("stacked-pieces-filled-typical-percent"), Of("stacked-pieces-filled-high-percent")),
            StackedFilledSourceId = rows["stacked-pieces-filled-typical-percent"].Required("source_id"),
        };

        double Of(string id) => rows.TryGetValue(id, out var row) ? row.Number("value") : throw new InvalidDataException($"constants.csv has no {id}.");
    }
}
