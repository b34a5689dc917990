using RubLab.Core.Meat;
using RubLab.Core.Sources;

namespace RubLab.Core.Catalogues;

/// <summary>Reads the cuts and what is known of each: composition, trim, yields, salt kept in cooking.</summary>
internal static class MeatTables
{
    /// <summary>The row of a table that stands for every cut without one of its own.</summary>
    private const string AnyCut = "any";

    public static List<Cut> Read(IReadOnlyDictionary<string, string> files)
    {
        var composition = ByCut(files, "cut-composition.csv", row => new MeatComposition(
            row.Number("sodium_mg_per_100g"), row.OptionalNumber("water_g_per_100g"), row.Citation(Confidence.High)));
        var trim = ByCut(files, "trim-losses.csv", row => new Cited(row.Band("trim", "_percent"), row.Citation()));
        var yields = ByCut(files, "cooking-yields.csv", row => new CookYield(
            row.Required("method"), row.Flag("is_default"), row.Band("yield", "_percent"), row.Citation()));
        var kept = ByCut(files, "cooking-retention.csv", row => new Cited(row.Band("kept", "_percent"), row.Citation()));

        return SeedTable.Read(files, "cuts.csv").Rows.ConvertAll(row =>
        {
            var id = row.Required("cut_id");
            return new Cut
            {
                Id = id,
                Name = row.Required("name"),
                Species = row.Required("species"),
                Class = row.Required("class"),
                SaltProducts = row.Words("salt_products"),
                Citation = row.Citation(Confidence.High),
                Composition = composition[id].FirstOrDefault(),
                TrimLossPercent = trim[id].FirstOrDefault() ?? trim[AnyCut].FirstOrDefault(),
                CookYields = yields[id].OrderByDescending(y => y.IsDefault).ToList(),
                KeptInCookingPercent = kept[id].FirstOrDefault(),
            };
        });
    }

    private static ILookup<string, T> ByCut<T>(IReadOnlyDictionary<string, string> files, string name, Func<SeedRow, T> read) =>
        SeedTable.Read(files, name).Rows.ToLookup(row => row.Required("cut_id"), read, StringComparer.Ordinal);
}
