namespace RubLab.Api.Http;

/// <summary>Headers that keep a browser from doing more with an answer than it is for.</summary>
public sealed class SafetyHeaders(RequestDelegate next)
{
    private const string PagePolicy =
        "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; object-src 'none'; base-uri 'none'; frame-ancestors 'none'; form-action 'self'";

    public Task InvokeAsync(HttpContext http)
    {
        // At the last moment, because an error answer starts its headers afresh.
        http.Response.OnStarting(Add, http);
        return next(http);
    }

    private static Task Add(object state)
    {
        var http = (HttpContext)state;
        var headers = http.Response.Headers;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        // The API explorer styles itself inline, and a sheet to print brings a stricter policy of its own.
        if (!http.Request.Path.StartsWithSegments("/swagger") && headers.ContentSecurityPolicy.Count == 0)
        {
            headers.ContentSecurityPolicy = PagePolicy;
        }

        return Task.CompletedTask;
    }
}
