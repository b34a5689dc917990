using System.Net.Mime;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.Net.Http.Headers;

namespace RubLab.Api.Http;

/// <summary>Lets only plain UTF-8 application/json through to an endpoint that reads a body.</summary>
/// <remarks>
/// The framework also takes other types that end in +json, fails on a charset it does not know, and reads a compressed
/// body as if it were not.
/// </remarks>
public sealed class JsonBodies(RequestDelegate next)
{
    public Task InvokeAsync(HttpContext http)
    {
        if (http.GetEndpoint() is not RouteEndpoint endpoint || endpoint.Metadata.GetMetadata<IAcceptsMetadata>() is null)
        {
            return next(http);
        }

        if (!IsPlainJson(http.Request))
        {
            return Problems.WriteAsync(http, ProblemTypes.UnsupportedMediaType);
        }

        if (http.Request.ContentType is not null)
        {
            // The framework does not know a charset in quotes; there is but one.
            http.Request.ContentType = MediaTypeNames.Application.Json;
        }

        return next(http);
    }

    private static bool IsPlainJson(HttpRequest request)
    {
        if (request.Headers.ContentEncoding.Count > 0)
        {
            return false;
        }

        // Without a type there may be no body either; the reader tells the two apart.
        return request.ContentType is null
            || (MediaTypeHeaderValue.TryParse(request.ContentType, out var type)
                && type.MediaType.Equals(MediaTypeNames.Application.Json, StringComparison.OrdinalIgnoreCase)
                && (!type.Charset.HasValue || type.Charset.Value.Trim('"').Equals("utf-8", StringComparison.OrdinalIgnoreCase)));
    }
}
