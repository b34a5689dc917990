using RubLab.Api.Hosting;
using RubLab.Api.Http;
using RubLab.Contracts.Json;
using RubLab.Contracts.Service;
using RubLab.Core.Catalogues;
using RubLab.Storage;

namespace RubLab.Api.Endpoints;

internal static class HealthEndpoints
{
    public static void MapHealth(this IEndpointRouteBuilder app) => app.MapGet("/health", Get)
        .WithTags("Service")
        .WithName("getHealth")
        .WithSummary("Whether the server and its store answer.")
        .Produces<HealthResponse>()
        .Produces<Contracts.Faults.Problem>(ProblemTypes.Broken.Status, Problems.MediaType)
        .Produces<Contracts.Faults.Problem>(ProblemTypes.Unavailable.Status, Problems.MediaType);

    private static async Task<IResult> Get(HttpContext http, Catalogue catalogue, Database database)
    {
        await using var work = await database.BeginAsync(Intent.Read, http.RequestAborted);
        await work.Kitchens.GetAsync(LocalKitchen.Id, http.RequestAborted);
        return TypedResults.Json(new HealthResponse("ok", catalogue.Version), RubLabJson.Default.HealthResponse);
    }
}
