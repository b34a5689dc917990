using Microsoft.Extensions.Primitives;
using RubLab.Api.Hosting;
using RubLab.Storage;
using RubLab.Storage.Keys;

namespace RubLab.Api.Http;

/// <summary>Lets a request to the API through with a key, or without one under the loopback rule.</summary>
public sealed class Access(RequestDelegate next, Database database)
{
    private static readonly Caller Local = new(LocalKitchen.Id, null, CanWrite: true);

    public static IResult UnknownKey() => Problems.Of(ProblemTypes.KeyNeeded, "This key is not known, or was revoked.");

    public static IResult MissingScope(string scope) => Problems.Of(ProblemTypes.NotAllowed, $"This key lacks the scope {scope}.");

    public async Task InvokeAsync(HttpContext http)
    {
        if (!http.Request.Path.StartsWithSegments("/v1"))
        {
            await next(http);
            return;
        }

        var authorization = http.Request.Headers.Authorization;
        var (caller, refusal) = StringValues.IsNullOrEmpty(authorization)
            ? (Local, Loopback.Refusal(http))
            : await ByKeyAsync(authorization.ToString(), http.RequestAborted);
        if (refusal is null && !caller!.CanWrite && http.GetEndpoint()?.Metadata.GetMetadata<WritesMetadata>() is not null)
        {
            refusal = MissingScope(Caller.WriteScope);
        }

        if (refusal is not null)
        {
            http.Response.Headers.WWWAuthenticate = "Bearer";
            await refusal.ExecuteAsync(http);
            return;
        }

        http.Features.Set(caller);
        await next(http);
    }

    private async Task<(Caller? Caller, IResult? Refusal)> ByKeyAsync(string authorization, CancellationToken cancellation)
    {
        const string Scheme = "Bearer ";
        AccessKey? key = null;
        if (authorization.StartsWith(Scheme, StringComparison.OrdinalIgnoreCase))
        {
            await using var work = await database.BeginAsync(Intent.Read, cancellation);
            key = await work.Keys.FindAsync(authorization[Scheme.Length..].Trim(), cancellation);
        }

        if (key is null)
        {
            return (null, UnknownKey());
        }

        return key.Scopes.Contains(Caller.ReadScope)
            ? (new Caller(key.KitchenId, key.Id, key.Scopes.Contains(Caller.WriteScope)), null)
            : (null, MissingScope(Caller.ReadScope));
    }
}
