using System.Net.Http.Headers;
using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using RubLab.Contracts.Json;

namespace RubLab.Benchmarks.Http;

/// <summary>
/// POST /v1/batch-sheets with 40 pieces and three treatments against two routes that return the same bytes precomputed,
/// one after reading the body as bytes, one after reading it as the request it is: rounds in turn, in one process, the
/// load generator beside the server.
/// </summary>
internal static class SheetThroughput
{
    private const string Sheets = "/v1/batch-sheets";
    private const string AfterBytes = "/precomputed/bytes";
    private const string AfterReading = "/precomputed/request";
    private const int Connections = 16;
    private const int Rounds = 7;

    public static async Task RunAsync(byte[] body)
    {
        var folder = Directory.CreateTempSubdirectory("rublab-benchmark");
        byte[] answer = [];
        await using var host = new WebApplicationFactory<Api.Callers.Caller>().WithWebHostBuilder(web => web
            .UseSetting("data", Path.Combine(folder.FullName, "benchmark.db"))
            .ConfigureServices(s => s.AddSingleton<IStartupFilter>(new PrecomputedRoute(() => answer))));
        host.UseKestrel(0);
        using var client = host.CreateClient();
        using var content = new ByteArrayContent(body) { Headers = { ContentType = new MediaTypeHeaderValue("application/json") } };
        using var response = await client.PostAsync(Sheets, content);
        answer = await response.EnsureSuccessStatusCode().Content.ReadAsByteArrayAsync();
        var port = client.BaseAddress!.Port;

        string[] paths = [Sheets, AfterBytes, AfterReading];
        foreach (var path in paths)
        {
            LoadGenerator.Run(port, path, body, Connections, TimeSpan.FromSeconds(4));
        }

        var rates = paths.ToDictionary(path => path, _ => new List<double>());
        for (var round = 0; round < Rounds; round++)
        {
            foreach (var path in paths)
            {
                rates[path].Add(LoadGenerator.Run(port, path, body, Connections, TimeSpan.FromSeconds(2)));
            }
        }

        Console.WriteLine($"body {body.Length} bytes, answer {answer.Length} bytes, medians of {Rounds} rounds:");
        foreach (var path in paths)
        {
            Console.WriteLine($"  {path,-22} {Median(rates[path]):0}/s, computed is {Median(rates[Sheets]) / Median(rates[path]):P0} of it");
        }

        folder.Delete(recursive: true);
    }

    private static double Median(List<double> rates) => rates.Order().ElementAt(rates.Count / 2);

    private sealed class PrecomputedRoute(Func<byte[]> answer) : IStartupFilter
    {
        public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) => app =>
        {
            app.Map(AfterBytes, branch => branch.Run(async http =>
            {
                await http.Request.Body.CopyToAsync(Stream.Null);
                await WriteAsync(http);
            }));
            app.Map(AfterReading, branch => branch.Run(async http =>
            {
                await JsonSerializer.DeserializeAsync(http.Request.BodyReader, RubLabJson.Default.BatchSheetRequest);
                await WriteAsync(http);
            }));
            next(app);
        };

        private async Task WriteAsync(HttpContext http)
        {
            http.Response.ContentType = "application/json; charset=utf-8";
            await http.Response.Body.WriteAsync(answer());
        }
    }
}
