namespace RubLab.Api.Callers;

/// <summary>What a browser says about which page sent a request, by Origin and Sec-Fetch-Site; no page can forge either.</summary>
public static class SameOrigin
{
    private const string FetchSite = "Sec-Fetch-Site";

    /// <summary>Whether the browser says that a page of this server sent it. Whoever says nothing has not shown it.</summary>
    public static bool IsShown(HttpRequest request) =>
        (request.Headers.Origin.Count > 0 || request.Headers.ContainsKey(FetchSite)) && !IsContradicted(request);

    /// <summary>Whether the browser says that a page of another origin sent it.</summary>
    public static bool IsContradicted(HttpRequest request) =>
        request.Headers.Origin.Any(origin => !IsOwn(origin, request))
        || request.Headers[FetchSite].Any(site => site != "same-origin");

    /// <summary>Whether the page that sent it came over TLS: to this server, or to a proxy in front of it.</summary>
    public static bool IsOverTls(HttpRequest request) =>
        request.IsHttps || request.Headers.Origin.Any(origin => origin?.StartsWith("https://", StringComparison.Ordinal) is true);

    // A page over TLS may be one that a proxy serves for us; one without TLS is never our own where we speak TLS ourselves.
    private static bool IsOwn(string? origin, HttpRequest request) =>
        Uri.TryCreate(origin, UriKind.Absolute, out var uri)
        && string.Equals(uri.Authority, request.Host.Value, StringComparison.OrdinalIgnoreCase)
        && (uri.Scheme == request.Scheme || uri.Scheme == Uri.UriSchemeHttps);
}
