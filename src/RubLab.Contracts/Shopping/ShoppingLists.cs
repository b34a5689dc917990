using RubLab.Contracts.Reading;
using RubLab.Contracts.Remarks;
using RubLab.Contracts.Scaling;
using RubLab.Contracts.Serving;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Remarks;
using RubLab.Core.Serving;

namespace RubLab.Contracts.Shopping;

/// <summary>Makes one shopping list of batch sheets and purchase plans.</summary>
public static class ShoppingLists
{
    public const int MostSheets = 20;
    public const int MostPlans = 20;
    public const int MostPacks = 500;

    public static Result<ShoppingListResponse> Compute(ShoppingListRequest request, Catalogue catalogue, FormulaLookup formulas)
    {
        var log = new FaultLog();
        var at = log.Root;
        var money = new MoneyReader(catalogue.Serving);
        var shelf = new ShelfReader(catalogue, money);
        var packs = shelf.Packs(request.Packs, at.At("packs"));
        var stock = shelf.Stock(request.Stock, at.At("stock"));
        if (request is { BatchSheets: not { Count: > 0 }, PurchasePlans: not { Count: > 0 } })
        {
            at.At("batchSheets").Fault("required", "Give at least one batch sheet or purchase plan.");
        }

        var mixes = new MixTotals(catalogue);
        mixes.Add(request.BatchSheets, formulas, at.At("batchSheets"));
        var plans = Plans(request.PurchasePlans, mixes, catalogue, money, formulas, at.At("purchasePlans"));
        var portions = Portions(request.Portions, plans, at.At("portions"));
        if (!log.IsClean)
        {
            return log.ResultOf<ShoppingListResponse>(null);
        }

        var findings = new FindingLog(catalogue);
        var writer = new ShoppingWriter(money.Currency, catalogue);
        var items = mixes.All.Select(mix => writer.Item(mix, packs.GetValueOrDefault((mix.Ingredient, mix.Form)), stock.GetValueOrDefault((mix.Ingredient, mix.Form)))).ToList();
        var meat = writer.Meat(plans);
        writer.NoticeUnpriced(items, meat, findings);
        return log.ResultOf(new ShoppingListResponse
        {
            Ingredients = items,
            Meat = meat,
            Outlay = writer.Outlay(items, meat),
            Used = writer.Used(items, meat, portions, PiecesOf(mixes, plans), GramsOf(mixes, plans)),
            Findings = FindingResponse.From(findings),
            DataVersion = catalogue.Version,
        });
    }

    private static List<PurchasePlan> Plans(
        IReadOnlyList<PurchasePlanRequest?>? requests, MixTotals mixes, Catalogue catalogue, MoneyReader money, FormulaLookup formulas, Place at)
    {
        var plans = new List<PurchasePlan>();
        if (requests?.Count > MostPlans)
        {
            at.Fault("too-many", $"At most {MostPlans} purchase plans; these are {requests.Count}.", ("most", (double)MostPlans), ("count", (double)requests.Count));
            return plans;
        }

        for (var i = 0; i < requests?.Count; i++)
        {
            if (requests[i] is not { } request)
            {
                Reader.Missing(at.At(i));
                continue;
            }

            var plan = PurchasePlans.Read(request, catalogue, money, at.At(i));
            if (PlanSheet.Make(plan, request.Menu, catalogue, formulas, at.At(i)) is var (_, sheet))
            {
                mixes.Add(sheet);
            }

            if (plan is not null)
            {
                plans.Add(plan);
            }
        }

        return plans;
    }

    private static long Portions(int? given, List<PurchasePlan> plans, Place at)
    {
        if (given is null)
        {
            return plans.Sum(p => p.GuestCount);
        }

        if (given is < 1 or > PlanRequest.MostGuests)
        {
            at.Fault(
                "out-of-range", $"{given} is out of range: from 1 to {PlanRequest.MostGuests} portions.",
                ("value", (double)given), ("lowest", 1d), ("highest", (double)PlanRequest.MostGuests));
        }

        return given.Value;
    }

    // Meat that stands in a plan and on a sheet that was sent is taken for the same meat; the sheet's is the one weighed.
    private static long PiecesOf(MixTotals mixes, List<PurchasePlan> plans) =>
        mixes.PieceCount > 0 ? mixes.PieceCount : plans.Sum(p => p.Lines.Sum(l => l.Pieces?.Typical ?? 0));

    private static double GramsOf(MixTotals mixes, List<PurchasePlan> plans) =>
        mixes.GreenGrams > 0 ? mixes.GreenGrams : plans.Sum(p => p.Lines.Sum(l => l.BoughtGrams));
}
