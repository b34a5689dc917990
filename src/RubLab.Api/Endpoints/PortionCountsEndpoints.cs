using RubLab.Api.Http;
using RubLab.Contracts.Json;
using RubLab.Contracts.Serving;

namespace RubLab.Api.Endpoints;

internal static class PortionCountsEndpoints
{
    public static void MapPortionCounts(this RouteGroupBuilder api) => api.MapPost("/portion-counts", Post)
        .WithTags("Serving")
        .Described("countPortions", "How many portions a pile of meat comes to.", "Pieces as bought or trimmed; servings are rounded down.")
        .Produces<PortionCountResponse>()
        .Refuses()
        .TakesBody();

    private static IResult Post(HttpContext http, KitchenCatalogue kitchen, PortionCountRequest request)
    {
        var result = PortionCounts.Compute(request, kitchen.Catalogue);
        return result.IsGood ? Answers.Computed(http, result.Value, RubLabJson.Default.PortionCountResponse) : Problems.Of(result.Log);
    }
}
