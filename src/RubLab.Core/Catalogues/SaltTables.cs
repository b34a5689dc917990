using RubLab.Core.Salt;
using RubLab.Core.Sauces;

namespace RubLab.Core.Catalogues;

/// <summary>Reads the salt ranges and the sodium references.</summary>
internal static class SaltTables
{
    public static List<SaltRange> ReadRanges(IReadOnlyDictionary<string, string> files) =>
        SeedTable.Read(files, "salt-ranges.csv").Rows.ConvertAll(row => new SaltRange(
            row.Required("range_id"), row.Required("product"), row.OptionalNumber("low_percent"), row.OptionalNumber("high_percent"),
            row.Required("base"), row.Required("applies_to"), row.Required("authority") != "common-practice",
            row.Text("note"), row.Citation())
        {
            IsTrial = row.Required("authority") == "trial",
        });

    public static List<SodiumReference> ReadReferences(IReadOnlyDictionary<string, string> files) =>
        SeedTable.Read(files, "sodium-references.csv").Rows.ConvertAll(row => new SodiumReference(
            row.Required("reference_id"), row.Required("name"), row.Number("sodium_mg"), row.Required("per"),
            row.OptionalNumber("low_percent"), row.OptionalNumber("high_percent"), row.Citation()));

    public static List<ReferenceAmount> ReadReferenceAmounts(IReadOnlyDictionary<string, string> files) =>
        SeedTable.Read(files, "reference-amounts.csv").Rows.ConvertAll(row => new ReferenceAmount(
            row.Required("kind_id"), row.Required("name"), row.OptionalNumber("amount_g"), row.OptionalNumber("amount_ml"), row.Citation()));

    /// <summary>The claims that one food's own sodium decides: per 100 g, or per reference amount of cooked meat.</summary>
    public static List<SodiumClaim> ReadClaims(IReadOnlyDictionary<string, string> files, IReadOnlyList<ReferenceAmount> amounts)
    {
        var cookedMeat = amounts.FirstOrDefault(amount => amount.Id == "meat-cooked")?.Grams
            ?? throw new InvalidDataException("reference-amounts.csv has no meat-cooked.");
        var claims = new List<SodiumClaim>();
        foreach (var row in SeedTable.Read(files, "sodium-claims.csv").Rows)
        {
            double? per = row.Required("per") switch { "reference-amount" => cookedMeat, "100g" => 100, _ => null };
            bool? isBelow = row.Required("comparison") switch { "less-than" => true, "at-most" => false, _ => null };
            if (per is { } grams && isBelow is { } below && row.OptionalNumber("limit_mg") is { } limit)
            {
                claims.Add(new SodiumClaim(
                    row.Required("claim_id"), row.Required("name"), row.Required("jurisdiction"), limit, grams, below, row.Citation()));
            }
        }

        return claims;
    }
}
