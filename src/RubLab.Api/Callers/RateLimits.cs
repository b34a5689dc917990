using System.Globalization;
using System.Threading.RateLimiting;
using Microsoft.AspNetCore.RateLimiting;
using RubLab.Api.Hosting;
using RubLab.Api.Http;

namespace RubLab.Api.Callers;

/// <summary>A limit per key and paired device, so that one program cannot starve the others. Whoever needs no key has no limit.</summary>
internal static class RateLimits
{
    private static readonly TimeSpan Second = TimeSpan.FromSeconds(1);

    public static IServiceCollection AddRateLimits(this IServiceCollection services, HostSettings settings) => services.AddRateLimiter(options =>
    {
        options.GlobalLimiter = PartitionedRateLimiter.Create<HttpContext, string>(http =>
            http.Features.Get<Caller>() is { Credential: { } credential }
                ? RateLimitPartition.GetTokenBucketLimiter(credential, _ => Bucket(settings.RequestsPerSecond))
                : RateLimitPartition.GetNoLimiter(""));
        options.OnRejected = RefuseAsync;
    });

    /// <summary>An answer that says how long to wait, in whole seconds.</summary>
    public static IResult Refusal(HttpContext http, TimeSpan wait, string? detail = null)
    {
        http.Response.Headers.RetryAfter = Math.Max(1, Math.Ceiling(wait.TotalSeconds)).ToString(CultureInfo.InvariantCulture);
        return Problems.Of(ProblemTypes.TooMany, detail);
    }

    private static TokenBucketRateLimiterOptions Bucket(int perSecond) => new()
    {
        TokenLimit = perSecond * 2,
        TokensPerPeriod = perSecond,
        ReplenishmentPeriod = Second,
        QueueLimit = 0,
    };

    private static async ValueTask RefuseAsync(OnRejectedContext context, CancellationToken cancellation)
    {
        var wait = context.Lease.TryGetMetadata(MetadataName.RetryAfter, out var after) ? after : Second;
        await Refusal(context.HttpContext, wait).ExecuteAsync(context.HttpContext);
    }
}
