namespace RubLab.Api.Hosting;

/// <summary>Asks a running server for its health: for a container's health check, where there is no other HTTP client.</summary>
public static class HealthProbe
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(4);

    /// <returns>The exit code: 0 if the server and its store answer, else 1, with the reason on standard error.</returns>
    public static async Task<int> AskAsync(string address)
    {
        if (!Uri.TryCreate(address, UriKind.Absolute, out var uri) || uri.Scheme is not ("http" or "https"))
        {
            return Unhealthy($"'{address}' is not an http address.");
        }

        using var client = new HttpClient(new SocketsHttpHandler { UseProxy = false }) { Timeout = Patience };
        try
        {
            using var answer = await client.GetAsync(uri);
            return answer.IsSuccessStatusCode ? 0 : Unhealthy($"{uri} answered {(int)answer.StatusCode}.");
        }
        catch (Exception e) when (e is HttpRequestException or TaskCanceledException)
        {
            return Unhealthy(e.Message);
        }
    }

    private static int Unhealthy(string reason)
    {
        Console.Error.WriteLine(reason);
        return 1;
    }
}
