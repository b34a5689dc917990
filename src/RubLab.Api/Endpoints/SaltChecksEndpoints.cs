using RubLab.Api.Callers;
using RubLab.Api.Formulas;
using RubLab.Api.Http;
using RubLab.Contracts.Json;
using RubLab.Contracts.Salt;
using RubLab.Storage;

namespace RubLab.Api.Endpoints;

internal static class SaltChecksEndpoints
{
    public static void MapSaltChecks(this RouteGroupBuilder api) => api.MapPost("/salt-checks", Post)
        .WithTags("Bench")
        .Described(
            "checkSalt", "How salty a stack of treatments will be, before anything is weighed.",
            "One pile line without weights. A card written in cups is taken as measured in cups, so its densities widen the bands; a batch sheet is weighed.")
        .Produces<SaltCheckResponse>()
        .Refuses()
        .TakesBody();

    private static async Task<IResult> Post(HttpContext http, KitchenCatalogue kitchen, Database database, SaltCheckRequest request)
    {
        var lookup = await StoredFormulas.FetchAsync(request.Treatments, Caller.Of(http), database, http.RequestAborted);
        var result = SaltChecks.Compute(request, kitchen.Catalogue, lookup);
        return result.IsGood
            ? Answers.Computed(http, result.Value, RubLabJson.Default.SaltCheckResponse)
            : Problems.Of(result.Log);
    }
}
