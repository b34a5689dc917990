using RubLab.Core.Catalogues;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;

namespace RubLab.Core.Yields;

/// <summary>A kitchen's records of one cut as yields: one for each way of cooking and kind of weight before.</summary>
public static class OwnYields
{
    /// <summary>The yields, the one with most records first; with as many, trimmed weights before weights as bought.</summary>
    /// <param name="cut">As in the reference.</param>
    /// <param name="records">At least one.</param>
    /// <param name="catalogue">The reference the records are drawn towards.</param>
    public static IReadOnlyList<OwnYield> Of(Cut cut, IReadOnlyList<CookRecord> records, Catalogue catalogue) => records
        .GroupBy(r => (r.Method, r.IsOfPurchase))
        .OrderByDescending(g => g.Count()).ThenBy(g => g.Key.IsOfPurchase).ThenBy(g => g.Key.Method, StringComparer.Ordinal)
        .Select(g => OwnYield.From(
            g.Select(r => r.BeforeGrams).ToArray(), g.Select(r => r.AfterGrams).ToArray(),
            ReferenceOf(cut, g.Key.Method, g.Key.IsOfPurchase, catalogue),
            catalogue.Constants.OwnYieldFullCount, catalogue.Constants.OwnYieldSpreadPercent) with
        {
            Method = g.Key.Method,
            IsOfPurchase = g.Key.IsOfPurchase,
        })
        .ToList();

    /// <summary>What the reference says of the same cook, bone in both weights, percent; none where it says nothing.</summary>
    private static Band? ReferenceOf(Cut cut, string? method, bool isOfPurchase, Catalogue catalogue)
    {
        if (cut.CookYields.FirstOrDefault(y => method is null || y.Method == method) is not { } yield)
        {
            return null;
        }

        var bone = cut.BonePercent?.Band ?? Band.Exact(0);
        var trim = isOfPurchase ? cut.TrimLossPercent?.Band ?? Band.Exact(0) : Band.Exact(0);
        return EdibleYield.OfChain(trim, yield.Percent, bone, catalogue.Serving.IsYieldOfGreen(cut.Id, yield.Method))?.CookedPerPurchase?.Times(100);
    }
}
