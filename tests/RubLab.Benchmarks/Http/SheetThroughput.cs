using System.Net.Http.Headers;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;

namespace RubLab.Benchmarks.Http;

/// <summary>
/// POST /v1/batch-sheets with 40 pieces and three treatments against a route that reads the same body and returns
/// the same bytes precomputed: rounds in turn, in one process, the load generator beside the server.
/// </summary>
internal static class SheetThroughput
{
    private const string Sheets = "/v1/batch-sheets";
    private const string Precomputed = "/precomputed";
    private const int Connections = 16;
    private const int Rounds = 7;

    public static async Task RunAsync(byte[] body)
    {
        var folder = Directory.CreateTempSubdirectory("rublab-benchmark");
        byte[] answer = [];
        await using var host = new WebApplicationFactory<Api.Http.Caller>().WithWebHostBuilder(web => web
            .UseSetting("data", Path.Combine(folder.FullName, "benchmark.db"))
            .ConfigureServices(s => s.AddSingleton<IStartupFilter>(new PrecomputedRoute(() => answer))));
        host.UseKestrel(0);
        using var client = host.CreateClient();
        using var content = new ByteArrayContent(body) { Headers = { ContentType = new MediaTypeHeaderValue("application/json") } };
        using var response = await client.PostAsync(Sheets, content);
        answer = await response.EnsureSuccessStatusCode().Content.ReadAsByteArrayAsync();
        var port = client.BaseAddress!.Port;

        LoadGenerator.Run(port, Sheets, body, Connections, TimeSpan.FromSeconds(5));
        LoadGenerator.Run(port, Precomputed, body, Connections, TimeSpan.FromSeconds(3));
        var computed = new List<double>();
        var precomputed = new List<double>();
        for (var round = 0; round < Rounds; round++)
        {
            computed.Add(LoadGenerator.Run(port, Sheets, body, Connections, TimeSpan.FromSeconds(2)));
            precomputed.Add(LoadGenerator.Run(port, Precomputed, body, Connections, TimeSpan.FromSeconds(2)));
        }

        computed.Sort();
        precomputed.Sort();
        Console.WriteLine(
            $"body {body.Length} bytes, answer {answer.Length} bytes: computed {computed[Rounds / 2]:0}/s, precomputed {precomputed[Rounds / 2]:0}/s, ratio {computed[Rounds / 2] / precomputed[Rounds / 2]:0.00}");
        folder.Delete(recursive: true);
    }

    private sealed class PrecomputedRoute(Func<byte[]> answer) : IStartupFilter
    {
        public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) => app =>
        {
            app.Map(Precomputed, branch => branch.Run(async http =>
            {
                await http.Request.Body.CopyToAsync(Stream.Null);
                http.Response.ContentType = "application/json; charset=utf-8";
                await http.Response.Body.WriteAsync(answer());
            }));
            next(app);
        };
    }
}
