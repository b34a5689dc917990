namespace RubLab.Api.Http;

/// <summary>Answers HEAD wherever GET is answered: the same work and headers, and the server leaves the body out.</summary>
public sealed class HeadRequests(RequestDelegate next)
{
    public Task InvokeAsync(HttpContext http)
    {
        if (HttpMethods.IsHead(http.Request.Method))
        {
            // Routing and handlers see a GET; the connection itself remembers what was asked and writes no body.
            http.Request.Method = HttpMethods.Get;
        }

        return next(http);
    }

    /// <summary>Adds HEAD to an Allow header that names GET.</summary>
    public static void AddToAllow(IHeaderDictionary headers)
    {
        if (headers.Allow.ToString() is var allow
            && allow.Contains(HttpMethods.Get, StringComparison.Ordinal)
            && !allow.Contains(HttpMethods.Head, StringComparison.Ordinal))
        {
            headers.Allow = allow + ", " + HttpMethods.Head;
        }
    }
}
