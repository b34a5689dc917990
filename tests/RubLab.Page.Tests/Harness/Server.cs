using System.Diagnostics;
using System.Net.Http.Headers;

namespace RubLab.Page.Tests.Harness;

/// <summary>The API as a process of its own, on a free loopback port with its own data file.</summary>
public sealed class Server : IAsyncDisposable
{
    private const string Greeting = "RubLab is at ";
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly Process _process;
    private readonly TemporaryFolder _data;

    private Server(Process process, TemporaryFolder data, Uri address)
    {
        _process = process;
        _data = data;
        Address = address;
        Http = new HttpClient { BaseAddress = address };
    }

    public Uri Address { get; }

    public HttpClient Http { get; }

    /// <summary>Starts it and waits until it says where it is.</summary>
    /// <param name="program">The API's assembly, published or only built.</param>
    /// <param name="key">RUBLAB_KEY: with one, no page is let in for being on the machine itself. This client sends it.</param>
    public static async Task<Server> StartAsync(string program, string? key = null)
    {
        var data = new TemporaryFolder();
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, WorkingDirectory = data.Path };
        foreach (var argument in (string[])[program, "--urls", "http://127.0.0.1:0", "--data", data.At("kitchen.db")])
        {
            start.ArgumentList.Add(argument);
        }

        if (key is not null)
        {
            start.Environment["RUBLAB_KEY"] = key;
        }

        var process = Process.Start(start)!;
        using var limit = new CancellationTokenSource(Patience);
        while (await process.StandardOutput.ReadLineAsync(limit.Token) is { } line)
        {
            if (line.StartsWith(Greeting, StringComparison.Ordinal))
            {
                // Read on, so that a full pipe never stops it.
                _ = process.StandardOutput.ReadToEndAsync(CancellationToken.None);
                var server = new Server(process, data, new Uri(line[Greeting.Length..].Split(' ')[0] + "/"));
                server.Http.DefaultRequestHeaders.Authorization = key is null ? null : new AuthenticationHeaderValue("Bearer", key);
                return server;
            }
        }

        throw new InvalidOperationException("The server ended before it said where it is.");
    }

    /// <summary>Ends the process, as if the machine had been switched off.</summary>
    public async Task StopAsync()
    {
        if (!_process.HasExited)
        {
            _process.Kill();
            await _process.WaitForExitAsync();
        }
    }

    public async ValueTask DisposeAsync()
    {
        await StopAsync();
        Http.Dispose();
        _process.Dispose();
        _data.Dispose();
    }
}
