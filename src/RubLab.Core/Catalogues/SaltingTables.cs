using RubLab.Core.Quantities;
using RubLab.Core.Timing;

namespace RubLab.Core.Catalogues;

/// <summary>Reads what is known of how far salt gets.</summary>
internal static class SaltingTables
{
    private const double SquareMicrometresPerSquareMetre = 1e12;

    public static SaltingReference Read(IReadOnlyDictionary<string, string> files) => new(
        ReadLimits(files),
        SeedTable.Read(files, "diffusivities.csv").Rows.ConvertAll(ReadDiffusivity),
        SeedTable.Read(files, "water-viscosity.csv").Rows.ConvertAll(row => new WaterViscosity(
            row.Number("temperature_c"), row.Number("viscosity_mpa_s"), row.Citation())));

    private static SaltDiffusivity ReadDiffusivity(SeedRow row)
    {
        double low = row.Number("diffusivity_low_um2_per_s"), high = row.Number("diffusivity_high_um2_per_s");
        var typical = row.OptionalNumber("diffusivity_typical_um2_per_s") ?? Math.Sqrt(low * high);
        if (!(low > 0 && low <= typical && typical <= high))
        {
            throw row.Wrong("diffusivity_low_um2_per_s", "is not the low end of a band above zero");
        }

        if (row.Flag("is_default") && row.OptionalNumber("temperature_c") is null)
        {
            throw row.Wrong("temperature_c", "is blank in a row that is a default");
        }

        return new SaltDiffusivity
        {
            Id = row.Required("diffusivity_id"),
            Species = row.Required("species"),
            IsDefault = row.Flag("is_default"),
            MeasuredOn = row.Required("measured_on"),
            TemperatureCelsius = row.OptionalNumber("temperature_c"),
            SquareMetresPerSecond = new Band(low, typical, high).Over(SquareMicrometresPerSquareMetre),
            Citation = row.Citation(),
            Note = row.Text("note"),
        };
    }

    private static SaltingLimits ReadLimits(IReadOnlyDictionary<string, string> files)
    {
        var rows = SeedTable.Read(files, "constants.csv").Rows.ToDictionary(row => row.Required("constant_id"), StringComparer.Ordinal);
        return new SaltingLimits
        {
            LowestDiffusivitySquareMetresPerSecond = Of("salt-diffusivity-lowest-um2-per-s") / SquareMicrometresPerSquareMetre,
            HighestDiffusivitySquareMetresPerSecond = Of("salt-diffusivity-highest-um2-per-s") / SquareMicrometresPerSquareMetre,
            LowestTemperatureCelsius = Of("salting-temperature-lowest-c"),
            HighestTemperatureCelsius = Of("salting-temperature-highest-c"),
            LowestThicknessMillimetres = Of("salting-thickness-lowest-mm"),
            HighestThicknessMillimetres = Of("salting-thickness-highest-mm"),
            LowestHours = Of("salting-time-lowest-h"),
            HighestHours = Of("salting-time-highest-h"),
            LowestWaterRatio = Of("soak-water-ratio-lowest"),
            HighestWaterRatio = Of("soak-water-ratio-highest"),
            DepthSharePercent = Of("salting-depth-share-percent"),
            ShallowPercent = Of("salting-shallow-percent"),
            WarmTemperatureCelsius = Of("salting-warm-temperature-c"),
            WarmSharePercent = Of("salting-warm-share-percent"),
        };

        double Of(string id) =>
            rows.TryGetValue(id, out var row) ? row.Number("value") : throw new InvalidDataException($"constants.csv has no {id}.");
    }
}
