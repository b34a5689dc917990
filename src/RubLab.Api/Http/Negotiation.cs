using Microsoft.Net.Http.Headers;

namespace RubLab.Api.Http;

/// <summary>Which representation a reader wants most (RFC 9110, 12.5.1).</summary>
public static class Negotiation
{
    public const string Json = "application/json";
    public const string Html = "text/html";
    public const string Csv = "text/csv";
    public const string Svg = "image/svg+xml";
    public const string JsonLd = "application/ld+json";

    /// <summary>The offered type the Accept header likes best, the first of equals; none if it rules all of them out.</summary>
    public static string? Best(HttpRequest request, params ReadOnlySpan<string> offered)
    {
        if (request.Headers.Accept.Count == 0)
        {
            return offered[0];
        }

        if (!MediaTypeHeaderValue.TryParseList(request.Headers.Accept, out var wanted))
        {
            return null;
        }

        string? best = null;
        var most = 0.0;
        foreach (var type in offered)
        {
            var quality = Quality(MediaTypeHeaderValue.Parse(type), wanted);
            if (quality > most)
            {
                (best, most) = (type, quality);
            }
        }

        return best;
    }

    // The range that fits most closely decides. Parameters are left aside: there is one variant of each type, and it is
    // UTF-8.
    private static double Quality(MediaTypeHeaderValue offered, IList<MediaTypeHeaderValue> wanted) => wanted
        .Where(w => w.MatchesAllTypes || (w.Type.Equals(offered.Type, StringComparison.OrdinalIgnoreCase)
            && (w.MatchesAllSubTypes || w.SubType.Equals(offered.SubType, StringComparison.OrdinalIgnoreCase))))
        .OrderBy(w => w.MatchesAllTypes ? 2 : w.MatchesAllSubTypes ? 1 : 0)
        .Select(w => w.Quality ?? 1)
        .FirstOrDefault();
}
