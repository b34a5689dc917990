using RubLab.Core.Salt;

namespace RubLab.Core.Catalogues;

/// <summary>Reads the salt ranges and the sodium references.</summary>
internal static class SaltTables
{
    public static List<SaltRange> ReadRanges(IReadOnlyDictionary<string, string> files) =>
        SeedTable.Read(files, "salt-ranges.csv").Rows.ConvertAll(row => new SaltRange(
            row.Required("range_id"), row.Required("product"), row.OptionalNumber("low_percent"), row.OptionalNumber("high_percent"),
            row.Required("base"), row.Required("applies_to"), row.Required("authority") == "published",
            row.Text("note"), row.Citation()));

    public static List<SodiumReference> ReadReferences(IReadOnlyDictionary<string, string> files) =>
        SeedTable.Read(files, "sodium-references.csv").Rows.ConvertAll(row => new SodiumReference(
            row.Required("reference_id"), row.Required("name"), row.Number("sodium_mg"), row.Required("per"),
            row.OptionalNumber("low_percent"), row.OptionalNumber("high_percent"), row.Citation()));
}
