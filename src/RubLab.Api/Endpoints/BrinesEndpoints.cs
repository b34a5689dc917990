using RubLab.Api.Http;
using RubLab.Contracts.Brining;
using RubLab.Contracts.Json;

namespace RubLab.Api.Endpoints;

internal static class BrinesEndpoints
{
    public static void MapBrines(this RouteGroupBuilder api) => api.MapPost("/brines", Post)
        .WithTags("Bench")
        .Described(
            "computeBrine", "A liquid to inject or to soak in: how strong, how much to make, what it leaves in the meat.",
            "Lines may be solved from targets, all at once. Legal loads of cures are not judged here.")
        .Produces<BrineResponse>()
        .Refuses()
        .TakesBody();

    private static IResult Post(HttpContext http, KitchenCatalogue kitchen, BrineRequest request)
    {
        var result = Brines.Compute(request, kitchen.Catalogue);
        return result.IsGood
            ? Answers.Computed(http, result.Value, RubLabJson.Default.BrineResponse)
            : Problems.Of(result.Log);
    }
}
