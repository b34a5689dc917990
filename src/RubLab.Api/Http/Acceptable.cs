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
        if (http.GetEndpoint() is not { } endpoint)
        {
            return true;
        }

        if (!MediaTypeHeaderValue.TryParseList(http.Request.Headers.Accept, out var wanted))
        {
            return false;
        }

        var offered = endpoint.Metadata.GetOrderedMetadata<IProducesResponseTypeMetadata>()
            .Where(m => m.StatusCode < 300)
            .SelectMany(m => m.ContentTypes)
            .Select(t => new MediaTypeHeaderValue(t))
            .DefaultIfEmpty(Json)
            .ToList();
        return wanted.Any(w => w.Quality is not 0 && offered.Exists(o => o.IsSubsetOf(w)));
    }
}
