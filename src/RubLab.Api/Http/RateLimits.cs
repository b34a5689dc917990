using System.Globalization;
using System.Threading.RateLimiting;
using Microsoft.AspNetCore.RateLimiting;
using RubLab.Api.Hosting;

namespace RubLab.Api.Http;

/// <summary>A limit per key, so that one program cannot starve the others. Whoever needs no key has no limit.</summary>
internal static class RateLimits
{
    private static readonly TimeSpan Second = TimeSpan.FromSeconds(1);

    public static IServiceCollection AddRateLimits(this IServiceCollection services, HostSettings settings) => services.AddRateLimiter(options =>
    {
        options.GlobalLimiter = PartitionedRateLimiter.Create<HttpContext, string>(http =>
            http.Features.Get<Caller>() is { KeyId: { } key }
                ? RateLimitPartition.GetTokenBucketLimiter(key, _ => Bucket(settings.RequestsPerSecond))
                : RateLimitPartition.GetNoLimiter(""));
        options.OnRejected = RefuseAsync;
    });

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
        context.HttpContext.Response.Headers.RetryAfter = Math.Max(1, Math.Ceiling(wait.TotalSeconds)).ToString(CultureInfo.InvariantCulture);
        await Problems.WriteAsync(context.HttpContext, ProblemTypes.TooMany);
    }
}
