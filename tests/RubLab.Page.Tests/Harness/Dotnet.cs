using System.Diagnostics;

namespace RubLab.Page.Tests.Harness;

/// <summary>The SDK, run on the sources.</summary>
public static class Dotnet
{
    /// <exception cref="InvalidOperationException">It failed; the message is what it said.</exception>
    public static async Task RunAsync(params IEnumerable<string> arguments)
    {
        var start = new ProcessStartInfo("dotnet", [.. arguments, "-nodeReuse:false", "--nologo"])
        {
            RedirectStandardOutput = true,
            WorkingDirectory = Repository.Root,
        };

        // What the test host's own build left in the environment would lead this one astray.
        foreach (var name in start.Environment.Keys.Where(k => k.StartsWith("MSBUILD", StringComparison.OrdinalIgnoreCase)).ToList())
        {
            start.Environment.Remove(name);
        }

        using var process = Process.Start(start)!;
        var said = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"dotnet {string.Join(' ', arguments)} failed:\n{said}");
        }
    }
}
