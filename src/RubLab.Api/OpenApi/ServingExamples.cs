using System.Text.Json;
using RubLab.Api.Http;
using RubLab.Contracts.Json;
using RubLab.Contracts.Listing;
using RubLab.Contracts.Scaling;
using RubLab.Contracts.Serving;
using RubLab.Contracts.Shopping;
using RubLab.Contracts.Yields;
using RubLab.Core.Catalogues;

namespace RubLab.Api.OpenApi;

/// <summary>Examples of plans, portions, shopping lists and own yields.</summary>
internal static class ServingExamples
{
    private const string At = "2026-03-14T21:05:00.000Z";

    public static IEnumerable<(string OperationId, OperationExample Example)> All(Catalogue catalogue)
    {
        var json = RubLabJson.Default;
        var stored = FormulaExamples.Stored();
        FormulaLookup lookup = (id, _) => stored.GetValueOrDefault(id);
        yield return ("planPurchase", new OperationExample
        {
            Summary = "Fifty guests, brisket and butt",
            Body = JsonSerializer.SerializeToNode(ServingBodies.Supper(), json.PurchasePlanRequest),
            Answer = JsonSerializer.SerializeToNode(PurchasePlans.Compute(ServingBodies.Supper(), catalogue, lookup).Value!, json.PurchasePlanResponse),
            Refusal = Problems.Of(PurchasePlans.Compute(ServingBodies.UnsoundSupper(), catalogue, lookup).Log),
        });
        yield return ("countPortions", new OperationExample
        {
            Summary = "Three whole briskets as bought",
            Body = JsonSerializer.SerializeToNode(ServingBodies.Pile(), json.PortionCountRequest),
            Answer = JsonSerializer.SerializeToNode(PortionCounts.Compute(ServingBodies.Pile(), catalogue).Value!, json.PortionCountResponse),
            Refusal = Problems.Of(PortionCounts.Compute(ServingBodies.UnsoundPile(), catalogue).Log),
        });
        yield return ("makeShoppingList", new OperationExample
        {
            Summary = "Two sheets, pepper in packs",
            Body = JsonSerializer.SerializeToNode(ServingBodies.List(), json.ShoppingListRequest),
            Answer = JsonSerializer.SerializeToNode(ShoppingLists.Compute(ServingBodies.List(), catalogue, lookup).Value!, json.ShoppingListResponse),
            Refusal = Problems.Of(ShoppingLists.Compute(ServingBodies.UnsoundList(), catalogue, lookup).Log),
        });

        catalogue.TryFindCut("beef-brisket", out var cut);
        var cooks = ServingBodies.Cooks();
        var own = OwnYieldRecords.From(OwnYieldRecords.Check(cooks, cut!, catalogue).Value!, cooks, cut!.Id, 1, At);
        var answer = JsonSerializer.SerializeToNode(own, json.OwnYieldResponse);
        yield return ("listYields", new OperationExample
        {
            Summary = "One cut recorded",
            Answer = JsonSerializer.SerializeToNode(new ListResponse<OwnYieldResponse>([own], null), json.ListResponseOwnYieldResponse),
            Refusal = ReferenceExamples.BadPage("yields"),
        });
        yield return ("getYield", new OperationExample { Summary = "Two smoked briskets", Answer = answer });
        yield return ("putYield", new OperationExample
        {
            Summary = "Two smoked briskets",
            Body = JsonSerializer.SerializeToNode(cooks, json.OwnYieldRequest),
            Answer = answer,
            Refusal = Problems.Of(OwnYieldRecords.Check(ServingBodies.UnsoundCooks(), cut, catalogue).Log),
        });
    }
}
