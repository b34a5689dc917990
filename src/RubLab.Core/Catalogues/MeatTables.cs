using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Sources;

namespace RubLab.Core.Catalogues;

/// <summary>Reads the cuts and what is known of each: composition, trim, yields, salt kept in cooking.</summary>
internal static class MeatTables
{
    /// <summary>The row of a table that stands for every cut without one of its own.</summary>
    private const string AnyCut = "any";

    public static List<Cut> Read(IReadOnlyDictionary<string, string> files, Constants constants)
    {
        var composition = ByCut(files, "cut-composition.csv", row => new MeatComposition(
            row.Number("sodium_mg_per_100g"), row.OptionalNumber("water_g_per_100g"), row.Citation(Confidence.High))
            {
                FatGramsPer100Grams = row.OptionalNumber("fat_g_per_100g"),
            });
        var trim = ByCut(files, "trim-losses.csv", row => new Cited(row.Band("trim", "_percent"), row.Citation()));
        var yields = ByCut(files, "cooking-yields.csv", row => ReadYield(row, constants));
        var kept = ByCut(files, "cooking-retention.csv", row => new Cited(row.Band("kept", "_percent"), row.Citation()));

        var shapes = ByCut(files, "cut-shapes.csv", row => ReadShape(row, constants.RawMeatDensityKilogramsPerCubicMetre));
        var bones = ByCut(files, "bone.csv", row => new Cited(row.Band("bone", "_percent"), row.Citation()));
        var solutions = ByCut(files, "added-solution.csv", row => new MeatComposition(
            row.Number("sodium_mg_per_100g"), row.OptionalNumber("water_g_per_100g"), row.Citation(Confidence.High)));

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
                Shape = shapes[id].FirstOrDefault(),
                BonePercent = bones[id].FirstOrDefault(),
                WithAddedSolution = solutions[id].FirstOrDefault(),
                KeptInCookingPercent = kept[id].FirstOrDefault(),
            };
        });
    }

    private static CookYield ReadYield(SeedRow row, Constants constants)
    {
        var band = row.Band("yield", "_percent");
        Citation? width = null;
        if (row.Text("width_source_id").Length > 0)
        {
            var spread = constants.CookYieldSpread;
            width = spread.Citation.SourceId == row.Text("width_source_id")
                ? spread.Citation
                : throw row.Wrong("width_source_id", "names no estimate of a yield's width");
            var (half, typical) = (spread.Band.Typical, band.Typical);
            band = band.Spanning(new Band(Math.Max(0, typical - half), typical, Math.Min(100, typical + half)));
        }
        else if (band.IsExact)
        {
            throw row.Wrong("width_source_id", "is blank, and the yield has no width of its own");
        }

        var basis = row.Required("basis") switch
        {
            "green" => YieldBasis.Green,
            "edible-portion" => YieldBasis.EdiblePortion,
            _ => throw row.Wrong("basis", "is not a basis"),
        };
        return new CookYield(row.Required("method"), row.Flag("is_default"), band, basis, row.Citation(), width);
    }

    private static CutShape ReadShape(SeedRow row, double rawMeatDensity) => new(
        row.Required("shape") switch
        {
            "brick" => ShapeKind.Brick,
            "cylinder" => ShapeKind.Cylinder,
            "ellipsoid" => ShapeKind.Ellipsoid,
            "slab" => ShapeKind.Slab,
            _ => throw row.Wrong("shape", "is not a shape"),
        },
        row.Number("length_to_thickness"), row.Number("width_to_thickness"), row.Band("thickness", "_mm"),
        row.OptionalNumber("density_kg_per_m3") ?? rawMeatDensity, row.Citation());

    private static ILookup<string, T> ByCut<T>(IReadOnlyDictionary<string, string> files, string name, Func<SeedRow, T> read) =>
        SeedTable.Read(files, name).Rows.ToLookup(row => row.Required("cut_id"), read, StringComparer.Ordinal);
}
