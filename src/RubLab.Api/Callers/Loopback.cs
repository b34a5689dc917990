using System.Net;
using RubLab.Api.Http;

namespace RubLab.Api.Callers;

/// <summary>
/// When a request may go without a key: it comes from this machine to this machine, under a loopback name, not
/// through a proxy and not from a page of another origin. The name and origin rules keep a web page that
/// re-points its own host name at this machine from reading the kitchen.
/// </summary>
public static class Loopback
{
    private static readonly string[] ProxyHeaders =
        ["Forwarded", "X-Real-IP", "X-Client-IP", "X-Cluster-Client-IP", "X-Original-Host", "X-Original-For", "True-Client-IP", "CF-Connecting-IP", "Via"];

    /// <summary>Null if the request may pass; else why not.</summary>
    public static IResult? Refusal(HttpContext http)
    {
        if (!IsLocal(http.Connection.RemoteIpAddress) || !IsLocal(http.Connection.LocalIpAddress))
        {
            return Problems.Of(ProblemTypes.KeyNeeded);
        }

        if (http.Request.Headers.Keys.Any(IsProxyHeader))
        {
            return Problems.Of(ProblemTypes.KeyNeeded, "A forwarded request needs a key.");
        }

        if (!IsLocalName(http.Request.Host.Host))
        {
            return HostNotAllowed();
        }

        return http.Request.Headers.Origin.Any(origin => !IsOwnOrigin(origin, http.Request))
            ? OtherOrigin()
            : null;
    }

    public static IResult HostNotAllowed() => Problems.Of(
        ProblemTypes.Unreadable, "", "host-not-allowed",
        "Without a key this server answers to localhost, 127.0.0.1 and [::1] alone.");

    public static IResult OtherOrigin() =>
        Problems.Of(ProblemTypes.NotAllowed, "A page of another origin may not use this kitchen without a key.");

    public static bool IsLocalName(string host) =>
        host.Equals("localhost", StringComparison.OrdinalIgnoreCase) || (IPAddress.TryParse(host.Trim('[', ']'), out var ip) && IPAddress.IsLoopback(ip));

    private static bool IsLocal(IPAddress? address) => address is not null && IPAddress.IsLoopback(address);

    private static bool IsProxyHeader(string name) =>
        name.StartsWith("X-Forwarded", StringComparison.OrdinalIgnoreCase) || ProxyHeaders.Contains(name, StringComparer.OrdinalIgnoreCase);

    private static bool IsOwnOrigin(string? origin, HttpRequest request) =>
        Uri.TryCreate(origin, UriKind.Absolute, out var uri)
        && string.Equals(uri.Authority, request.Host.Value, StringComparison.OrdinalIgnoreCase)
        && uri.Scheme == request.Scheme;
}
