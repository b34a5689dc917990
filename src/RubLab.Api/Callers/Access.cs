using Microsoft.Extensions.Primitives;
using RubLab.Api.Hosting;
using RubLab.Api.Http;
using RubLab.Storage;
using RubLab.Storage.Pairing;

namespace RubLab.Api.Callers;

/// <summary>Lets a request to the API through with a key, from a paired device, or without either under the loopback rule.</summary>
public sealed class Access(RequestDelegate next, Database database, Keys keys, Devices devices)
{
    private static readonly Caller Local = new(LocalKitchen.Id, null, Caller.AllScopes);
    private static readonly Caller Configured = new(LocalKitchen.Id, "configured", Caller.AllScopes);

    public static IResult UnknownKey() => Problems.Of(ProblemTypes.KeyNeeded, "This key is not known, or was revoked.");

    public static IResult UnknownDevice() => Problems.Of(ProblemTypes.KeyNeeded, "This device is not paired, or no longer.");

    public static IResult MissingScope(string scope) => Problems.Of(ProblemTypes.NotAllowed, $"This key or device lacks the scope {scope}.");

    public static IResult UnshownOrigin() => Problems.Of(
        ProblemTypes.NotAllowed, "A paired device changes something from a page of this server alone: Origin or Sec-Fetch-Site has to say so.");

    public async Task InvokeAsync(HttpContext http)
    {
        if (!http.Request.Path.StartsWithSegments("/v1"))
        {
            await next(http);
            return;
        }

        var endpoint = http.GetEndpoint()?.Metadata;
        if (endpoint?.GetMetadata<UnpairedMetadata>() is not null)
        {
            await (SameOrigin.IsContradicted(http.Request) ? Loopback.OtherOrigin().ExecuteAsync(http) : next(http));
            return;
        }

        var (caller, refusal) = await CallerAsync(http);
        refusal ??= caller!.Lacks(Needed(endpoint)) is { } missing ? MissingScope(missing) : null;
        if (refusal is not null)
        {
            http.Response.Headers.WWWAuthenticate = "Bearer";
            await refusal.ExecuteAsync(http);
            return;
        }

        http.Features.Set(caller);
        await next(http);
    }

    private static IEnumerable<string> Needed(EndpointMetadataCollection? endpoint)
    {
        yield return Caller.ReadScope;
        if (endpoint?.GetMetadata<WritesMetadata>() is not null)
        {
            yield return Caller.WriteScope;
        }

        if (endpoint?.GetMetadata<PairsMetadata>() is not null)
        {
            yield return Caller.PairScope;
        }
    }

    private static bool IsReading(string method) => HttpMethods.IsGet(method) || HttpMethods.IsHead(method) || HttpMethods.IsOptions(method);

    private async Task<(Caller? Caller, IResult? Refusal)> CallerAsync(HttpContext http)
    {
        var authorization = http.Request.Headers.Authorization;
        if (!StringValues.IsNullOrEmpty(authorization))
        {
            return await ByKeyAsync(authorization.ToString(), http.RequestAborted);
        }

        var cookie = SessionCookie.Of(http.Request);
        if (cookie is not null && await devices.FindAsync(cookie, http.RequestAborted) is { } device)
        {
            return await ByDeviceAsync(http, cookie, device);
        }

        if (keys.MayBeKeyless)
        {
            return (Local, Loopback.Refusal(http));
        }

        return (null, cookie is null ? Problems.Of(ProblemTypes.KeyNeeded) : UnknownDevice());
    }

    // The browser sends the cookie by itself, so what changes something must also show which page wanted it.
    private async Task<(Caller? Caller, IResult? Refusal)> ByDeviceAsync(HttpContext http, SessionCookie cookie, DeviceSession device)
    {
        if (!IsReading(http.Request.Method) && !SameOrigin.IsShown(http.Request))
        {
            return (null, UnshownOrigin());
        }

        await devices.RenewAsync(http, cookie, device);
        return (new Caller(device.KitchenId, "device:" + device.Id, device.Scopes, device.Id), null);
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

        return (new Caller(key.KitchenId, "key:" + key.Id, key.Scopes), null);
    }
}
