using RubLab.Api.Http;
using RubLab.Contracts.Curing;
using RubLab.Contracts.Json;

namespace RubLab.Api.Endpoints;

internal static class CuresEndpoints
{
    public static void MapCures(this RouteGroupBuilder api) => api.MapPost("/cures", Post)
        .WithTags("Bench")
        .Described(
            "computeCure", "A cure for whole pieces or ground meat: what to weigh, what it comes to, and the legal levels.",
            "Lines may be solved from targets. A limited additive is never rounded up, and a cure above a level is refused unless it is asked for as a check.")
        .Produces<CureResponse>()
        .Refuses()
        .TakesBody();

    private static IResult Post(HttpContext http, KitchenCatalogue kitchen, CureRequest request)
    {
        var result = Cures.Compute(request, kitchen.Catalogue);
        return result.IsGood
            ? Answers.ComputedShort(http, result.Value, RubLabJson.Default.CureResponse)
            : Problems.Of(result.Log);
    }
}
