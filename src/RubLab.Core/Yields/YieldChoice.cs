using RubLab.Core.Catalogues;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Serving;
using RubLab.Core.Sources;

namespace RubLab.Core.Yields;

/// <summary>The yield chosen for a cut, and what it stands on.</summary>
public sealed record YieldChoice
{
    private YieldChoice()
    {
    }

    public required YieldOrigin Origin { get; init; }

    public required EdibleYield Yield { get; init; }

    /// <summary>The cooking yield or purchase yield used, percent.</summary>
    public required CountedBand Cooking { get; init; }

    /// <summary>Trim counted, percent; none where the yield has it within.</summary>
    public required CountedBand? Trim { get; init; }

    /// <summary>Bone counted, percent; none for a cut without, or where the yield has it within.</summary>
    public required CountedBand? Bone { get; init; }

    /// <summary>The own records used; none for another origin.</summary>
    public required OwnYield? Own { get; init; }

    /// <summary>The published yields straight from purchase weight, as one band; none where nobody published one.</summary>
    /// <param name="cut">The cut.</param>
    /// <param name="method">Way of cooking; none to span all of them.</param>
    /// <param name="catalogue">Whose figures.</param>
    /// <remarks>The typical is the one of the cut's default way of cooking, else one that names no way, else the first.</remarks>
    public static Cited? Published(Cut cut, string? method, Catalogue catalogue)
    {
        var rows = catalogue.Serving.PurchaseYieldsOf(cut.Id).Where(y => !y.IsWithoutSkin && (method is null || y.Method == method)).ToList();
        if (rows.Count == 0)
        {
            return null;
        }

        var usual = cut.CookYields is [var first, ..] ? first.Method : null;
        var typical = rows.Find(y => y.Method is not null && y.Method == usual) ?? rows.Find(y => y.Method is null) ?? rows[0];
        return new Cited(new Band(rows.Min(y => y.Percent), typical.Percent, rows.Max(y => y.Percent)), typical.Citation);
    }

    /// <summary>Stated, else the kitchen's own, else the reference's, else a published purchase yield.</summary>
    /// <param name="cut">The cut as the kitchen knows it.</param>
    /// <param name="asked">What the request says.</param>
    /// <param name="catalogue">Whose figures.</param>
    /// <param name="isImpossible">The bone would leave nothing to eat: nothing is chosen then.</param>
    /// <returns>None where nothing is known or possible.</returns>
    public static YieldChoice? Of(Cut cut, YieldRequest asked, Catalogue catalogue, out bool isImpossible)
    {
        isImpossible = false;
        if (!asked.ByPurchaseYield && CookedOf(cut, asked, catalogue, out var isOfGreen) is var (origin, cooking, own))
        {
            var trim = CountedBand.Of(asked.TrimPercent, cut.TrimLossPercent);
            var bone = CountedBand.Of(asked.BonePercent, cut.BonePercent);
            var withTrim = trim?.Band ?? Band.Exact(0);
            var withBone = bone?.Band ?? Band.Exact(0);
            var edible = own is { IsOfPurchase: true }
                ? EdibleYield.OfCookedPurchase(cooking.Band, withTrim, withBone)
                : EdibleYield.OfChain(withTrim, cooking.Band, withBone, isOfGreen);
            isImpossible = edible is null;
            return edible is null ? null : new YieldChoice
            {
                Origin = origin, Yield = edible, Cooking = cooking, Trim = trim, Bone = withBone.High > 0 ? bone : null, Own = own,
            };
        }

        if (Published(cut, asked.Method, catalogue) is not { } published)
        {
            return null;
        }

        var removed = asked.IsOfGreen ? cut.TrimLossPercent : null;
        return new YieldChoice
        {
            Origin = YieldOrigin.PurchaseYield,
            Yield = EdibleYield.OfPurchase(removed is null ? published.Band : OfTrimmed(published.Band, removed.Band)),
            Cooking = new CountedBand(published.Band, published.Citation),
            Trim = CountedBand.Of(null, removed),
            Bone = null,
            Own = null,
        };
    }

    // The trim within a yield of purchase weight is already off a trimmed weight.
    private static Band OfTrimmed(Band yield, Band trim)
    {
        var high = Math.Min(100, yield.High / (1 - (trim.High / 100)));
        var typical = Math.Min(high, yield.Typical / (1 - (trim.Typical / 100)));
        return new Band(Math.Min(typical, yield.Low / (1 - (trim.Low / 100))), typical, high);
    }

    private static (YieldOrigin Origin, CountedBand Cooking, OwnYield? Own)? CookedOf(Cut cut, YieldRequest asked, Catalogue catalogue, out bool isOfGreen)
    {
        isOfGreen = true;
        if (asked.CookYieldPercent is { } stated)
        {
            return (YieldOrigin.Stated, new CountedBand(stated, null), null);
        }

        if (cut.OwnYields.FirstOrDefault(y =>
            (asked.Method is null || y.Method == asked.Method) && (!y.IsOfPurchase || (asked.TrimPercent is null && !asked.IsOfGreen))) is { } own)
        {
            return (YieldOrigin.Own, new CountedBand(own.Percent, own.Citation), own);
        }

        if (cut.CookYields.FirstOrDefault(y => asked.Method is null || y.Method == asked.Method) is { } reference)
        {
            isOfGreen = catalogue.Serving.IsYieldOfGreen(cut.Id, reference.Method);
            return (YieldOrigin.Reference, new CountedBand(reference.Percent, reference.Citation), null);
        }

        return null;
    }
}
