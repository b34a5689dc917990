using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.Net.Http.Headers;

namespace RubLab.Api.Http;

/// <summary>Refuses a request whose Accept header rules out every representation of the endpoint.</summary>
public sealed class Acceptable(RequestDelegate next)
{
    private static readonly MediaTypeHeaderValue Json = new("application/json");

    public Task InvokeAsync(HttpContext http) =>
        http.Request.Path.StartsWithSegments("/v1") && http.Request.Headers.Accept.Count > 0 && !Accepts(http)
            ? Problems.WriteAsync(http, ProblemTypes.NotAcceptable)
            : next(http);

    private static bool Accepts(HttpContext http)
    {
        // What routing puts in place of an endpoint, for a wrong method say, has its own answer.
        if (http.GetEndpoint() is not RouteEndpoint endpoint)
        {
            return true;
        }

        if (!MediaTypeHeaderValue.TryParseList(http.Request.Headers.Accept, out var wanted))
        {
            return false;
        }

        return endpoint.Metadata.GetOrderedMetadata<IProducesResponseTypeMetadata>()
            .Where(m => m.StatusCode < 300)
            .SelectMany(m => m.ContentTypes)
            .Select(t => MediaTypeHeaderValue.Parse(t))
            .DefaultIfEmpty(Json)
            .Any(offered => Quality(offered, wanted) > 0);
    }

    // The range that fits most closely decides (RFC 9110, 12.5.1). Parameters are left aside: there is one variant of
    // each type, and it is UTF-8.
    private static double Quality(MediaTypeHeaderValue offered, IList<MediaTypeHeaderValue> wanted) => wanted
        .Where(w => w.MatchesAllTypes || (w.Type.Equals(offered.Type, StringComparison.OrdinalIgnoreCase)
            && (w.MatchesAllSubTypes || w.SubType.Equals(offered.SubType, StringComparison.OrdinalIgnoreCase))))
        .OrderBy(w => w.MatchesAllTypes ? 2 : w.MatchesAllSubTypes ? 1 : 0)
        .Select(w => w.Quality ?? 1)
        .FirstOrDefault();
}
