using RubLab.Core.Curing;

namespace RubLab.Core.Catalogues;

/// <summary>Reads the legal levels of limited additives.</summary>
internal static class CuringTables
{
    private const string Any = "any";

    public static List<AdditiveLimit> ReadLimits(IReadOnlyDictionary<string, string> files) =>
        SeedTable.Read(files, "additive-limits.csv").Rows.ConvertAll(row => new AdditiveLimit
        {
            Id = row.Required("limit_id"),
            Title = row.Required("title"),
            Additive = row.Required("additive"),
            Methods = row.Words("methods").Where(word => word != Any).Select(word => MethodOf(word, row)).ToList(),
            Products = row.Words("products"),
            Level = LevelOf(row),
            CountsOwnWeight = row.Required("counted_as") switch
            {
                "own-weight" => true,
                "sodium-salt" => false,
                _ => throw row.Wrong("counted_as", "is not a way to count"),
            },
            LowPartsPerMillion = row.OptionalNumber("low_ppm"),
            HighPartsPerMillion = row.OptionalNumber("high_ppm"),
            Base = BaseOf(row),
            AskedBy = row.Text("asked_by") is { Length: > 0 } asker ? asker : null,
            Note = row.Text("note"),
            Citation = row.Citation(),
        });

    private static CuringMethod MethodOf(string word, SeedRow row) => word switch
    {
        "injection" => CuringMethod.Injection,
        "soak" => CuringMethod.Soak,
        "dry" => CuringMethod.Dry,
        "ground" => CuringMethod.Ground,
        _ => throw row.Wrong("methods", "names no method"),
    };

    private static LimitLevel LevelOf(SeedRow row)
    {
        var level = row.Required("level") switch
        {
            "cap" => LimitLevel.Cap,
            "required" => LimitLevel.Required,
            "alternative" => LimitLevel.Alternative,
            "minimum" => LimitLevel.Minimum,
            _ => throw row.Wrong("level", "is not a level"),
        };
        return (level == LimitLevel.Cap || row.OptionalNumber("low_ppm") is not null)
            && (level is LimitLevel.Minimum or LimitLevel.Alternative || row.OptionalNumber("high_ppm") is not null)
            ? level
            : throw row.Wrong("level", "lacks its figure");
    }

    private static LimitBase BaseOf(SeedRow row) => row.Required("base") switch
    {
        "green-ingoing" => LimitBase.GreenIngoing,
        "green-retained" => LimitBase.GreenRetained,
        "finished" => LimitBase.Finished,
        "ingredients" => LimitBase.Ingredients,
        _ => throw row.Wrong("base", "is not a base"),
    };
}
