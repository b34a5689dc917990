using Microsoft.Extensions.Primitives;
using RubLab.Api.Hosting;
using RubLab.Storage;

namespace RubLab.Api.Http;

/// <summary>Lets a request to the API through with a key, or without one under the loopback rule.</summary>
public sealed class Access(RequestDelegate next, Database database, Keys keys)
{
    private static readonly Caller Local = new(LocalKitchen.Id, null, CanWrite: true);
    private static readonly Caller Configured = new(LocalKitchen.Id, "configured", CanWrite: true);

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
            ? (Local, keys.MayBeKeyless ? Loopback.Refusal(http) : Problems.Of(ProblemTypes.KeyNeeded))
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
        if (!authorization.StartsWith(Scheme, StringComparison.OrdinalIgnoreCase))
        {
            return (null, UnknownKey());
        }

        var plain = authorization[Scheme.Length..].Trim();
        if (keys.IsConfigured(plain))
        {
            return (Configured, null);
        }

        await using var work = await database.BeginAsync(Intent.Read, cancellation);
        if (await work.Keys.FindAsync(plain, cancellation) is not { } key)
        {
            return (null, UnknownKey());
        }

        return key.Scopes.Contains(Caller.ReadScope)
            ? (new Caller(key.KitchenId, key.Id, key.Scopes.Contains(Caller.WriteScope)), null)
            : (null, MissingScope(Caller.ReadScope));
    }
}
