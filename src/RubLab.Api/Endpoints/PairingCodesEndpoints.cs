using RubLab.Api.Callers;
using RubLab.Api.Http;
using RubLab.Contracts.Json;
using RubLab.Contracts.Pairing;
using RubLab.Storage;

namespace RubLab.Api.Endpoints;

internal static class PairingCodesEndpoints
{
    public static void MapPairingCodes(this RouteGroupBuilder api) => api.MapPost("/pairing-codes", Create)
        .WithTags("Devices")
        .Described(
            "createPairingCode", "A code that pairs one more device, good for five minutes and one use.",
            "Needs the scope pair. Show it on the screen that asked; it is given this once. A kitchen has at most five open: a further one takes the place of the oldest.")
        .WithMetadata(new PairsMetadata())
        .Produces<PairingCodeResponse>(StatusCodes.Status201Created)
        .Refuses()
        .TakesBody();

    private static async Task<IResult> Create(HttpContext http, Database database, PairingCodes codes, PairingCodeRequest request)
    {
        var check = Pairings.Check(request);
        if (!check.IsGood)
        {
            return Problems.Of(check.Log);
        }

        // Nobody hands on more than they have.
        var caller = Caller.Of(http);
        if (caller.Lacks(check.Value.Scopes) is { } missing)
        {
            return Access.MissingScope(missing);
        }

        var code = PairingCodes.Draw();
        var hash = codes.Hash(code);
        await using var work = await database.BeginAsync(Intent.Write, http.RequestAborted);
        var open = await work.PairingCodes.IssueAsync(caller.KitchenId, hash, check.Value.Scopes, check.Value.Name, http.RequestAborted);
        await work.CommitAsync(http.RequestAborted);
        http.Response.Headers.CacheControl = "no-store";
        return TypedResults.Json(PairingAnswers.Of(open, code), RubLabJson.Default.PairingCodeResponse, statusCode: StatusCodes.Status201Created);
    }
}
