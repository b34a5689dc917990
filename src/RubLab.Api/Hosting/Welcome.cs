namespace RubLab.Api.Hosting;

/// <summary>What the server says when it is up: where it is, where its data is, and one request to try.</summary>
public static class Welcome
{
    public static string Text(IEnumerable<string> addresses, bool needsKey, string dataLocation, string dataVersion)
    {
        var address = Reachable(addresses.FirstOrDefault() ?? HostSettings.DefaultUrl);
        var key = needsKey ? " -H 'Authorization: Bearer YOUR-KEY'" : "";
        return $$$"""

            RubLab is at {{{address}}}  (the bench page; the API under /v1, described at /swagger)
            Reference data {{{dataVersion}}}; your formulas are in {{{dataLocation}}}
            Try:
              curl -s {{{address}}}/v1/batch-sheets{{{key}}} -H 'Content-Type: application/json' -d '{"pile":[{"cut":"beef-brisket","pieces":[{"weight":{"value":5.2,"unit":"kg"}},{"weight":{"value":6.1,"unit":"kg"}}]}],"treatments":[{"formula":{"name":"Salt and pepper","kind":"rub","lines":[{"ingredient":"salt","form":"flake-dense","amount":{"value":8,"unit":"g/kg"}},{"ingredient":"black-pepper","form":"coarse","amount":{"value":6,"unit":"g/kg"}}]}}]}'

            """;
    }

    // Listening on every address includes this machine's own.
    private static string Reachable(string address) => address
        .Replace("//0.0.0.0", "//127.0.0.1", StringComparison.Ordinal)
        .Replace("//[::]", "//[::1]", StringComparison.Ordinal);
}
