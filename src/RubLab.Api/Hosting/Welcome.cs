namespace RubLab.Api.Hosting;

/// <summary>What the server says when it is up: where it is, where its data is, and one request to try.</summary>
public static class Welcome
{
    public static string Text(IEnumerable<string> addresses, string dataPath, string dataVersion)
    {
        var address = addresses.FirstOrDefault() ?? HostSettings.DefaultUrl;
        return $$$"""

            RubLab is at {{{address}}}  (the bench page; the API under /v1, described at /swagger)
            Reference data {{{dataVersion}}}; your formulas are in {{{dataPath}}}
            Try:
              curl -s {{{address}}}/v1/batch-sheets -H 'Content-Type: application/json' -d '{"pile":[{"cut":"beef-brisket","pieces":[{"weight":{"value":5.2,"unit":"kg"}},{"weight":{"value":6.1,"unit":"kg"}}]}],"treatments":[{"formulaId":"lockside-evening-salt-and-pepper"}]}'

            """;
    }
}
