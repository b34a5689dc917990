using RubLab.Core.Serving;
using RubLab.Core.Shopping;
using RubLab.Core.Sources;
using RubLab.Core.Yields;

namespace RubLab.Core.Catalogues;

/// <summary>Reads portions, weights of pieces, purchase yields and currencies.</summary>
internal static class ServingTables
{
    public static ServingReference Read(IReadOnlyDictionary<string, string> files) => new(
        SeedTable.Read(files, "portion-weights.csv").Rows.ConvertAll(row => new PortionWeight(
            row.Required("appetite"), row.Required("name"), row.Number("portion_g"), row.Citation())),
        SeedTable.Read(files, "piece-weights.csv").Rows.ToDictionary(
            row => row.Required("cut_id"), row => new Cited(row.Band("piece", "_g"), row.Citation()), StringComparer.Ordinal),
        SeedTable.Read(files, "purchase-yields.csv").Rows.ToLookup(
            row => row.Required("cut_id"),
            row => new PurchaseYield(
                row.Text("method") is { Length: > 0 } method ? method : null,
                row.Number("yield_percent"),
                row.Required("basis") switch
                {
                    "edible-as-purchased" => false,
                    "edible-without-skin-as-purchased" => true,
                    _ => throw row.Wrong("basis", "is not a base"),
                },
                row.Citation()),
            StringComparer.Ordinal),
        SeedTable.Read(files, "currencies.csv").Rows.ConvertAll(row => new Currency(row.Required("code"), (int)row.Number("minor_digits"))),
        SeedTable.Read(files, "cooking-yields.csv").Rows.Where(row => row.Required("basis") == "green")
            .Select(row => (row.Required("cut_id"), row.Required("method"))).ToHashSet());
}
