using Microsoft.Playwright;

namespace RubLab.Page.Tests.Harness;

/// <summary>The browser the tests drive: the system's own, never one that a tool downloads.</summary>
public static class Chromium
{
    public const string Path = "/usr/bin/chromium";

    /// <summary>Null if it is there; else why the tests are skipped.</summary>
    public static string? Missing { get; } =
        File.Exists(Path) ? null : $"{Path} is missing: install Debian's package chromium to run these.";

    public static Task<IBrowser> LaunchAsync(IPlaywright playwright) => playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
    {
        ExecutablePath = Path,
        Args =
        [
            "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
            "--disable-background-networking", "--disable-component-update", "--disable-sync",
        ],
    });
}
