using System.Diagnostics;
using System.Text;

namespace RubLab.Api.Tests.Hosting;

/// <summary>The built server, started as a person starts it.</summary>
public sealed class ServerProcess : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly Process _process;
    private readonly StringBuilder _output = new();
    private readonly TaskCompletionSource _isUp = new(TaskCreationOptions.RunContinuationsAsynchronously);

    private ServerProcess(Process process)
    {
        _process = process;
    }

    public int ExitCode => _process.ExitCode;

    /// <summary>What it has written to both of its outputs so far.</summary>
    public string Output
    {
        get
        {
            lock (_output)
            {
                return _output.ToString();
            }
        }
    }

    /// <summary>The address it printed.</summary>
    public string Address => Between("RubLab is at ", "  (");

    /// <summary>The JSON of the request it printed.</summary>
    public string Example => Between("-d '", "'");

    /// <summary>The most memory it has held so far, in bytes.</summary>
    public long PeakMemory
    {
        get
        {
            _process.Refresh();
            return _process.PeakWorkingSet64;
        }
    }

    /// <summary>Starts it and waits until it says that it is up, or ends.</summary>
    /// <param name="key">RUBLAB_KEY; none if null.</param>
    /// <param name="arguments">Its command line.</param>
    public static async Task<ServerProcess> StartAsync(string? key, params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "RubLab.Api.dll"), .. arguments])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
        };
        foreach (var name in start.Environment.Keys.Where(n => n.StartsWith("ASPNETCORE_", StringComparison.Ordinal) || n.StartsWith("RUBLAB_", StringComparison.Ordinal)).ToList())
        {
            start.Environment.Remove(name);
        }

        if (key is not null)
        {
            start.Environment["RUBLAB_KEY"] = key;
        }

        var server = new ServerProcess(new Process { StartInfo = start, EnableRaisingEvents = true });
        server._process.OutputDataReceived += (_, line) => server.Take(line.Data);
        server._process.ErrorDataReceived += (_, line) => server.Take(line.Data);
        server._process.Start();
        server._process.BeginOutputReadLine();
        server._process.BeginErrorReadLine();
        var ended = server._process.WaitForExitAsync();
        await Task.WhenAny(server._isUp.Task, ended).WaitAsync(Patience);
        return server;
    }

    /// <summary>Runs it to its end.</summary>
    public static async Task<ServerProcess> RunAsync(string? key, params string[] arguments)
    {
        var server = await StartAsync(key, arguments);
        Assert.True(server._process.HasExited, "It runs on: " + server.Output);
        return server;
    }

    public async ValueTask DisposeAsync()
    {
        if (!_process.HasExited)
        {
            _process.Kill();
            await _process.WaitForExitAsync();
        }

        _process.Dispose();
    }

    // The end of either output comes as no line, at times before the other's first.
    private void Take(string? line)
    {
        if (line is null)
        {
            return;
        }

        lock (_output)
        {
            _output.AppendLine(line);
        }

        if (line.Contains("curl ", StringComparison.Ordinal))
        {
            _isUp.TrySetResult();
        }
    }

    private string Between(string before, string after)
    {
        var output = Output;
        var start = output.IndexOf(before, StringComparison.Ordinal);
        Assert.True(start >= 0, output);
        start += before.Length;
        return output[start..output.IndexOf(after, start, StringComparison.Ordinal)];
    }
}
