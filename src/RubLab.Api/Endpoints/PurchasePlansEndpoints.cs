using RubLab.Api.Callers;
using RubLab.Api.Formulas;
using RubLab.Api.Http;
using RubLab.Contracts.Json;
using RubLab.Contracts.Serving;
using RubLab.Storage;

namespace RubLab.Api.Endpoints;

internal static class PurchasePlansEndpoints
{
    public static void MapPurchasePlans(this RouteGroupBuilder api) => api.MapPost("/purchase-plans", Post)
        .WithTags("Serving")
        .Described("planPurchase", "What to buy for so many guests: from portions back to whole pieces, with left-overs and cost.", "Divides by yields and rounds up. Buys for typical yields, or for the low end where buyFor is safe. Where the menu names formulas, the answer holds the body of a batch sheet, ready to be posted.")
        .Produces<PurchasePlanResponse>()
        .Refuses()
        .TakesBody();

    private static async Task<IResult> Post(HttpContext http, KitchenCatalogue kitchen, Database database, PurchasePlanRequest request)
    {
        var lookup = await StoredFormulas.FetchAsync(PlanFormulas.Of(request), Caller.Of(http), database, http.RequestAborted);
        var result = PurchasePlans.Compute(request, kitchen.Catalogue, lookup);
        return result.IsGood ? Answers.Computed(http, result.Value, RubLabJson.Default.PurchasePlanResponse) : Problems.Of(result.Log);
    }
}
