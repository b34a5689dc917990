using RubLab.Core.Quantities;

namespace RubLab.Core.Serving;

/// <summary>
/// From guests to what to buy: portions, edible, cooked, trimmed and purchase weight, whole pieces. Each step divides by a
/// yield; what is bought is rounded up.
/// </summary>
public sealed class PurchasePlan
{
    private PurchasePlan(PlanRequest request, IReadOnlyList<PurchaseLine> lines, long guests, double eatenGrams)
    {
        Request = request;
        Lines = lines;
        GuestCount = guests;
        EatenGrams = eatenGrams;
    }

    public PlanRequest Request { get; }

    public IReadOnlyList<PurchaseLine> Lines { get; }

    public long GuestCount { get; }

    /// <summary>Edible meat all guests eat together.</summary>
    public double EatenGrams { get; }

    /// <summary>Edible meat for one guest, in the mean.</summary>
    public double PortionGrams => EatenGrams / GuestCount;

    /// <summary>Edible meat of all that is bought.</summary>
    public Band EdibleGrams => Lines.Aggregate(Band.Exact(0), (sum, line) => sum.Plus(line.EdibleGrams));

    /// <summary>Guests fed at the low end, typically and at the high end, if who misses one cut takes another.</summary>
    public (long Low, long Typical, long High) Fed => (
        BuyingGuide.Servings(EdibleGrams.Low, PortionGrams), BuyingGuide.Servings(EdibleGrams.Typical, PortionGrams),
        BuyingGuide.Servings(EdibleGrams.High, PortionGrams));

    /// <summary>Plans the purchase.</summary>
    public static PurchasePlan Compute(PlanRequest request)
    {
        long guests = 0;
        double eaten = 0;
        foreach (var group in request.Guests)
        {
            guests += group.Count;
            eaten += group.Count * group.PortionGrams;
        }

        ArgumentOutOfRangeException.ThrowIfLessThan(guests, 1);
        return new PurchasePlan(request, request.Menu.Select(line => Of(line, request, eaten * line.SharePercent / 100, guests)).ToList(), guests, eaten);
    }

    private static PurchaseLine Of(MenuLine line, PlanRequest request, double eaten, long guests)
    {
        var yield = line.Choice.Yield;
        var edible = eaten * (1 + (request.ReservePercent / 100));
        var needed = Band.Exact(edible).Over(yield.EdiblePerPurchase);
        var isSafe = request.End == PurchaseEnd.Safe;
        var portion = eaten / guests;
        var perUnit = request.UnitGrams * (isSafe ? yield.EdiblePerPurchase.Low : yield.EdiblePerPurchase.Typical) / portion;
        var (pieces, bought) = Buy(line, request, needed, isSafe);
        var (_, safe) = isSafe ? (pieces, bought) : Buy(line, request, needed, isSafe: true);
        return new PurchaseLine
        {
            Line = line,
            PortionGrams = portion,
            EatenGrams = eaten,
            EdibleNeededGrams = edible,
            CookedNeededGrams = yield.CookedPerEdible?.Times(edible),
            GreenNeededGrams = yield.EdiblePerGreen is { } perGreen ? Band.Exact(edible).Over(perGreen) : null,
            PurchaseNeededGrams = needed,
            Pieces = pieces,
            BoughtGrams = bought,
            EdibleGrams = yield.EdiblePerPurchase.Times(bought),
            SafeGrams = safe,
            UnitsPerHundred = BuyingGuide.UnitsPerHundred(perUnit, request.UnitStep),
        };
    }

    // How heavy a piece is decides how many are bought, not how much meat: that is seen on the seller's scale.
    private static ((long Low, long Typical, long High)? Pieces, double Grams) Buy(MenuLine line, PlanRequest request, Band needed, bool isSafe)
    {
        var grams = isSafe ? needed.High : needed.Typical;
        if (line.PieceGrams is { Band: var piece })
        {
            var count = BuyingGuide.Up(grams / piece.Typical);
            return ((BuyingGuide.Up(grams / piece.High), count, BuyingGuide.Up(grams / piece.Low)), count * piece.Typical);
        }

        return (null, BuyingGuide.UpTo(grams / request.UnitGrams, request.UnitStep) * request.UnitGrams);
    }
}
