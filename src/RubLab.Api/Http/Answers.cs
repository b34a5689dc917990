using System.Text.Json.Serialization.Metadata;

namespace RubLab.Api.Http;

/// <summary>Writes JSON answers with the caching headers of the API.</summary>
public static class Answers
{
    /// <summary>A GET: 304 when the sender holds this tag already.</summary>
    public static IResult Tagged<T>(HttpContext http, string tag, T value, JsonTypeInfo<T> type)
    {
        var headers = http.Response.Headers;
        headers.ETag = tag;
        headers.CacheControl = "private, no-cache";
        headers.Vary = "Authorization, Accept";
        return EntityTags.IsHeld(http.Request, tag)
            ? TypedResults.StatusCode(StatusCodes.Status304NotModified)
            : TypedResults.Json(value, type);
    }

    /// <summary>A computed document.</summary>
    public static IResult Computed<T>(HttpContext http, T value, JsonTypeInfo<T> type)
    {
        http.Response.Headers.CacheControl = "no-store";
        return TypedResults.Json(value, type);
    }
}
