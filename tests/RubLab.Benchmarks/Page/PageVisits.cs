using System.Diagnostics;
using System.Globalization;
using Microsoft.Playwright;
using RubLab.Page.Tests.Harness;

namespace RubLab.Benchmarks.Page;

/// <summary>The published page in Chromium: what it downloads, when it computes, how fast, and what an hour of use leaves in memory.</summary>
public static class PageVisits
{
    private const int Visits = 5;
    private const int Pieces = 200;
    private const int Computations = 60;
    private const double Throttling = 4;
    private const string Formula = "lockside-pork-rub";
    private static readonly TimeSpan BetweenEdits = TimeSpan.FromSeconds(3);

    /// <summary>Measures and prints.</summary>
    /// <param name="minutes">How long the page is used for the figure of memory.</param>
    public static async Task RunAsync(double minutes)
    {
        using var folder = new TemporaryFolder();
        await Dotnet.RunAsync("publish", "src/RubLab.Api", "-c", "Release", "-o", folder.Path);
        var files = Directory.GetFiles(Path.Combine(folder.Path, "wwwroot"), "*.br", SearchOption.AllDirectories);
        Say($"{files.Sum(f => new FileInfo(f).Length) / 1e6:0.00} MB of brotli in {files.Length} files");
        await using var server = await Server.StartAsync(folder.At("RubLab.Api.dll"));
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await Chromium.LaunchAsync(playwright);

        var visits = new List<(double Cold, double Warm)>();
        for (var i = 0; i < Visits; i++)
        {
            visits.Add(await VisitAsync(browser, server.Address));
        }

        Say($"usable on a first visit: {Spread(visits.Select(v => v.Cold))} ms");
        Say($"usable from the device's own copy: {Spread(visits.Select(v => v.Warm))} ms");
        await ComputeAsync(browser, server.Address);
        await UseAsync(browser, server.Address, TimeSpan.FromMinutes(minutes));
    }

    private static async Task<(double Cold, double Warm)> VisitAsync(IBrowser browser, Uri address)
    {
        await using var profile = await browser.NewContextAsync();
        var page = await profile.NewPageAsync();
        var cold = await UsableAsync(page, address);
        await page.WaitForFunctionAsync("() => navigator.serviceWorker.controller?.state === 'activated'");
        await page.CloseAsync();
        return (cold, await UsableAsync(await profile.NewPageAsync(), address));
    }

    // Usable: the reference data is loaded, so that a sheet can be computed.
    private static async Task<double> UsableAsync(IPage page, Uri address)
    {
        var watch = Stopwatch.StartNew();
        await page.GotoAsync(address.ToString(), new PageGotoOptions { WaitUntil = WaitUntilState.Commit });
        await page.WaitForFunctionAsync("() => document.getElementById('edition')?.textContent.includes('Reference data')");
        return watch.Elapsed.TotalMilliseconds;
    }

    private static async Task ComputeAsync(IBrowser browser, Uri address)
    {
        await using var profile = await browser.NewContextAsync();
        var page = await OpenAsync(profile, address);
        var session = await profile.NewCDPSessionAsync(page);
        await session.SendAsync("Emulation.setCPUThrottlingRate", new Dictionary<string, object> { ["rate"] = Throttling });
        var times = await page.EvaluateAsync<double[]>(
            """
            async ({ pieces, computations, formula }) => {
              const { computeSheet } = await import('/js/engine.js');
              const { keptFormula } = await import('/js/kept/kitchen.js');
              const formulas = { [formula]: await keptFormula(formula) };
              const request = {
                pile: [{ id: 'shoulders', cut: 'pork-shoulder', pieces: Array.from({ length: pieces }, (_, i) => ({ weight: { value: 3000 + 7 * i, unit: 'g' } })) }],
                treatments: [{ formulaId: formula }], weighingStep: { value: 1, unit: 'g' }, overage: { value: 5, unit: '%' }, portion: { value: 170, unit: 'g' },
              };
              return Array.from({ length: computations }, () => {
                const from = performance.now();
                if (!computeSheet(request, formulas).ok) throw new Error('The sheet was refused.');
                return performance.now() - from;
              });
            }
            """,
            new { pieces = Pieces, computations = Computations, formula = Formula });
        var sorted = times.Skip(3).Order().ToArray();
        Say($"{Pieces} pieces computed, CPU slowed {Throttling} times: least {sorted[0]:0.0}, lower quartile {sorted[sorted.Length / 4]:0.0}, median {sorted[sorted.Length / 2]:0.0}, most {sorted[^1]:0.0} ms");
    }

    // A pile changed every few seconds and a screen looked at in between, as on a working day.
    private static async Task UseAsync(IBrowser browser, Uri address, TimeSpan time)
    {
        string[] screens = ["bench", "formulas", "convert", "brine", "people", "paper", "bench"];
        await using var profile = await browser.NewContextAsync();
        var page = await OpenAsync(profile, address);
        var session = await profile.NewCDPSessionAsync(page);
        await session.SendAsync("Performance.enable");
        var watch = Stopwatch.StartNew();
        var edits = 0;
        Say($"memory before: {await MemoryAsync(page, session)}");
        while (watch.Elapsed < time)
        {
            await page.EvaluateAsync("screen => { location.hash = `#/${screen}`; }", screens[edits % screens.Length]);
            await page.Locator("#pile-0").EvaluateAsync(
                "(e, text) => { e.value = text; e.dispatchEvent(new Event('input', { bubbles: true })); }", $"{(edits % 40) + 1} x {3 + (edits % 7 / 10.0):0.0} kg");
            edits++;
            await Task.Delay(BetweenEdits);
            if (edits % 200 == 0)
            {
                Say($"  after {watch.Elapsed.TotalMinutes:0} minutes: {await MemoryAsync(page, session)}");
            }
        }

        Say($"memory after {time.TotalMinutes:0} minutes and {edits} changes: {await MemoryAsync(page, session)}");
    }

    private static async Task<string> MemoryAsync(IPage page, ICDPSession session)
    {
        await session.SendAsync("HeapProfiler.collectGarbage");
        var metrics = (await session.SendAsync("Performance.getMetrics"))!.Value.GetProperty("metrics").EnumerateArray();
        var heap = metrics.Single(m => m.GetProperty("name").GetString() == "JSHeapUsedSize").GetProperty("value").GetDouble();
        var runtime = await page.EvaluateAsync<double>("() => globalThis.getDotnetRuntime(0).Module.HEAPU8.byteLength");
        var nodes = await page.EvaluateAsync<int>("() => document.querySelectorAll('*').length");
        return string.Create(CultureInfo.InvariantCulture, $"script {heap / 1e6:0.0} MB, runtime {runtime / 1e6:0.0} MB, {nodes} elements");
    }

    private static async Task<IPage> OpenAsync(IBrowserContext profile, Uri address)
    {
        var page = await profile.NewPageAsync();
        await UsableAsync(page, address);
        await page.SelectOptionAsync("#formula-0", Formula);
        await page.SelectOptionAsync("#cut-0", "pork-shoulder");
        await page.FillAsync("#pile-0", "4 x 3.6 kg");
        await page.WaitForSelectorAsync("#on-meat-0");
        return page;
    }

    private static string Spread(IEnumerable<double> values)
    {
        var sorted = values.Order().ToArray();
        return string.Create(CultureInfo.InvariantCulture, $"{sorted[0]:0} to {sorted[^1]:0}, median {sorted[sorted.Length / 2]:0}");
    }

    private static void Say(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));
}
