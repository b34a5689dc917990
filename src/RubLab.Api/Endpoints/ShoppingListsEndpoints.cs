using RubLab.Api.Callers;
using RubLab.Api.Formulas;
using RubLab.Api.Http;
using RubLab.Contracts.Json;
using RubLab.Contracts.Shopping;
using RubLab.Storage;

namespace RubLab.Api.Endpoints;

internal static class ShoppingListsEndpoints
{
    public static void MapShoppingLists(this RouteGroupBuilder api) => api.MapPost("/shopping-lists", Post)
        .WithTags("Serving")
        .Described("makeShoppingList", "One list of what to buy for several batch sheets and purchase plans.", "Ingredients summed by form, less the stock, in whole packs, with what is paid at the till and what goes into the food. At most 20 sheets and 20 plans.")
        .Produces<ShoppingListResponse>()
        .Refuses()
        .TakesBody();

    private static async Task<IResult> Post(HttpContext http, KitchenCatalogue kitchen, Database database, ShoppingListRequest request)
    {
        var lookup = await PlanFormulas.FetchAsync(request, Caller.Of(http), database, http.RequestAborted);
        var result = ShoppingLists.Compute(request, kitchen.Catalogue, lookup);
        return result.IsGood ? Answers.Computed(http, result.Value, RubLabJson.Default.ShoppingListResponse) : Problems.Of(result.Log);
    }
}
