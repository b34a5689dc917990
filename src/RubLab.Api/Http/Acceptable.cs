using Microsoft.AspNetCore.Http.Metadata;

namespace RubLab.Api.Http;

/// <summary>Refuses a request whose Accept header rules out every representation of the endpoint.</summary>
public sealed class Acceptable(RequestDelegate next)
{
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

        var offered = endpoint.Metadata.GetOrderedMetadata<IProducesResponseTypeMetadata>()
            .Where(m => m.StatusCode < 300)
            .SelectMany(m => m.ContentTypes)
            .DefaultIfEmpty(Negotiation.Json)
            .ToArray();
        return Negotiation.Best(http.Request, offered) is not null;
    }
}
