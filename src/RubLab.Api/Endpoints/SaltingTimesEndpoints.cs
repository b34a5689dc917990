using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Mvc;
using RubLab.Api.Http;
using RubLab.Contracts.Json;
using RubLab.Contracts.Outputs;
using RubLab.Contracts.Timing;

namespace RubLab.Api.Endpoints;

internal static class SaltingTimesEndpoints
{
    // Nothing but the picture's own style, named by its hash.
    private static readonly string PicturePolicy =
        $"default-src 'none'; style-src 'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(SaltingPlots.Css)))}'; "
        + "base-uri 'none'; frame-ancestors 'none'; form-action 'none'";

    public static void MapSaltingTimes(this RouteGroupBuilder api) => api.MapPost("/salting-times", Post)
        .WithTags("Bench")
        .Described(
            "computeSaltingTimes", "How far salt gets into one piece in the time it has, and how long it needs.",
            "By diffusion, from a dry brine, a soak or a salt bed. Bands by species; with a diffusivity and a measured piece the exact solution. "
            + "JSON, or a picture where Accept likes image/svg+xml best; with plot, that picture alone.")
        .Produces<SaltingTimesResponse>(StatusCodes.Status200OK, Negotiation.Json, Negotiation.Svg)
        .Refuses()
        .TakesBody();

    private static IResult Post(HttpContext http, KitchenCatalogue kitchen, SaltingTimesRequest request, [FromQuery(Name = "plot")] string? plot)
    {
        var type = plot is null ? Negotiation.Best(http.Request, Negotiation.Json, Negotiation.Svg) : Negotiation.Best(http.Request, Negotiation.Svg);
        if (type is null)
        {
            return Problems.Of(
                ProblemTypes.NotAcceptable,
                plot is null ? "Without plot this is application/json or image/svg+xml." : "A plot is image/svg+xml and nothing else.");
        }

        var result = SaltingAnswers.Compute(request, kitchen.Catalogue);
        var asked = SaltingPlots.All.Read(plot, result.Log.Root.At("plot"), SaltingPlot.Profile);
        if (!result.IsGood || !result.Log.IsClean)
        {
            return Problems.Of(result.Log);
        }

        return type == Negotiation.Svg
            ? Picture(http, result.Value, asked.Value)
            : Answers.ComputedShort(http, result.Value.Response, RubLabJson.Default.SaltingTimesResponse);
    }

    private static IResult Picture(HttpContext http, SaltingAnswer answer, SaltingPlot plot)
    {
        http.Response.Headers.ContentSecurityPolicy = PicturePolicy;
        return Answers.ComputedText(http, Negotiation.Svg, [SaltingPlots.Of(answer, plot)]);
    }
}
