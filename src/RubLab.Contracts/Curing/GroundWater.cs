using RubLab.Core.Catalogues;
using RubLab.Core.Curing;
using RubLab.Core.Remarks;
using RubLab.Core.Salt;

namespace RubLab.Contracts.Curing;

/// <summary>Tells of water and ice in ground meat that no level holds because nobody named the product.</summary>
internal static class GroundWater
{
    private const double PartsPerMillionPerPercent = 10_000;

    public static void Notice(SaltLedger ledger, Catalogue catalogue, FindingLog findings, string pointer)
    {
        if (ledger.Line is not { Product: null, IsGround: true } || !ledger.Entries.Any(HoldsWater))
        {
            return;
        }

        foreach (var limit in catalogue.AdditiveLimits)
        {
            if (limit is { Additive: AdditiveLoads.Water, HighPartsPerMillion: { } highest } && !limit.HoldsFor(product: null))
            {
                findings.Add(
                    "water-not-held", pointer, limit.Citation.SourceId,
                    ("line", Said.Line(ledger.Line.Id, ledger.Line.Cut)), ("title", limit.Title),
                    ("highest", highest / PartsPerMillionPerPercent), ("products", limit.Products.ToArray()));
            }
        }
    }

    private static bool HoldsWater(LedgerEntry entry) =>
        entry.Line.Amount > 0 && entry.Line.Ingredient.LimitedGramsPer100Grams.ContainsKey(AdditiveLoads.Water);
}
