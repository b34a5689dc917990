using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Contracts.Reference;
using RubLab.Contracts.Remarks;
using RubLab.Contracts.Shopping;
using RubLab.Contracts.Yields;
using RubLab.Core.Catalogues;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Serving;
using RubLab.Core.Shopping;
using RubLab.Core.Yields;

namespace RubLab.Contracts.Serving;

/// <summary>Writes a plan in the words of the wire.</summary>
internal static class PlanWriter
{
    private const string Grams = "g";

    public static PurchasePlanResponse From(
        PurchasePlan plan, PurchasePlanRequest request, Currency? currency, PlannedSheet? sheet, FindingLog findings, Catalogue catalogue)
    {
        var unit = request.BoughtIn ?? Vocabulary.BoughtIn[BoughtIn.Kilogram];
        return new PurchasePlanResponse
        {
            Guests = plan.GuestCount,
            Portion = Weight(plan.PortionGrams),
            BuyFor = Vocabulary.PurchaseEnds[plan.Request.End],
            Lines = plan.Lines.Select((line, i) => From(line, plan, request.Menu![i]!, unit, currency, catalogue)).ToList(),
            PurchaseWeight = In(unit, plan.Lines.Sum(l => l.BoughtGrams)),
            Edible = Weights(plan.EdibleGrams),
            Fed = CountBand.From(plan.Fed),
            Cost = CostOf(plan, currency) is { } cost ? CostResponse.From(cost) : null,
            BatchSheet = sheet,
            Findings = FindingResponse.From(findings),
            DataVersion = catalogue.Version,
        };
    }

    public static Quantity Weight(double grams) => new(Rounded.Weight(grams), Grams);

    public static QuantityBand Weights(Band grams) => QuantityBand.From(grams, Grams, Rounded.Weight);

    /// <summary>The cost of all lines that have a price; none where no line has.</summary>
    public static Cost? CostOf(PurchasePlan plan, Currency? currency)
    {
        if (currency is null || plan.Lines.All(l => l.Cost is null))
        {
            return null;
        }

        var priced = plan.Lines.Where(l => l.Cost is not null).ToList();
        return Cost.Of(
            currency, priced.Sum(l => currency.Rounded(l.Cost!.Value)), plan.GuestCount,
            priced.TrueForAll(l => l.Pieces is not null) ? priced.Sum(l => l.Pieces!.Value.Typical) : 0, priced.Sum(l => l.EdibleGrams.Typical));
    }

    private static PurchaseLineResponse From(
        PurchaseLine line, PurchasePlan plan, MenuLineRequest asked, string unit, Currency? currency, Catalogue catalogue) => new()
    {
        Id = line.Line.Id,
        Cut = line.Line.Cut.Id,
        Share = new Quantity(Rounded.Exact(line.Line.SharePercent), "%"),
        Portion = Weight(line.PortionGrams),
        EdibleNeeded = Weight(line.EdibleNeededGrams),
        CookedNeeded = line.CookedNeededGrams is { } cooked ? Weights(cooked) : null,
        GreenNeeded = line.GreenNeededGrams is { } green ? Weights(green) : null,
        PurchaseNeeded = Weights(line.PurchaseNeededGrams),
        Pieces = line.Pieces is { } pieces ? CountBand.From(pieces) : null,
        PieceWeight = line.Line.PieceGrams is { } piece ? CountedFigure.From(piece, Grams) : null,
        PurchaseWeight = In(unit, line.BoughtGrams),
        PerHundredPortions = new Quantity(Rounded.Exact(line.UnitsPerHundred), unit),
        Yield = YieldUsedResponse.From(line.Line.Choice),
        CrossCheck = CrossCheckOf(line, asked.Method, catalogue),
        Edible = Weights(line.EdibleGrams),
        Portions = CountBand.From(line.Portions),
        LeftOver = Weights(line.LeftOverGrams),
        Shortfall = Weights(line.ShortfallGrams),
        Cost = line.Cost is { } cost && currency is not null
            ? CostResponse.From(Cost.Of(currency, cost, plan.GuestCount, line.Pieces?.Typical ?? 0, line.EdibleGrams.Typical))
            : null,
    };

    private static Quantity In(string unit, double grams) => new(Math.Round(UnitTable.Get(unit).FromBase(grams), 3, MidpointRounding.AwayFromZero), unit);

    private static CrossCheckResponse? CrossCheckOf(PurchaseLine line, string? method, Catalogue catalogue)
    {
        if (line.Line.Choice.Origin == YieldOrigin.PurchaseYield)
        {
            return null;
        }

        return YieldChoice.Published(line.Line.Cut, method, catalogue) is { } published
            ? new CrossCheckResponse(
                FigureResponse.From(published.Band, "%", published.Citation),
                Weights(Band.Exact(line.EdibleNeededGrams).Over(published.Band.Over(100))))
            : null;
    }
}
