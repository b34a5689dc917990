using Microsoft.Playwright;

namespace RubLab.Page.Tests.Harness;

/// <summary>One visitor with a browser profile of their own, and what happened behind the page.</summary>
public sealed class Bench : IAsyncDisposable
{
    private readonly IBrowserContext _context;

    private Bench(IBrowserContext context, IPage page, Uri address)
    {
        _context = context;
        Page = page;
        Address = address;
        context.Request += (_, request) => Requests.Add(new Uri(request.Url));
        page.PageError += (_, error) => Errors.Add(error);
        page.Console += (_, message) =>
        {
            if (message.Type == "error")
            {
                Errors.Add(message.Text);
            }
        };
    }

    public IPage Page { get; }

    public Uri Address { get; }

    public List<Uri> Requests { get; } = [];

    /// <summary>Scripts that failed, and what the browser refused.</summary>
    public List<string> Errors { get; } = [];

    public ILocator Sheet => Page.Locator("#sheet-body");

    public static async Task<Bench> OpenAsync(
        IBrowser browser, Uri address, int width = 1280, ColorScheme scheme = ColorScheme.Light, string locale = "en-US")
    {
        var context = await browser.NewContextAsync(new BrowserNewContextOptions
        {
            ViewportSize = new ViewportSize { Width = width, Height = 800 },
            ColorScheme = scheme,
            Locale = locale,
        });
        var bench = new Bench(context, await context.NewPageAsync(), address);
        await bench.Page.GotoAsync(address.ToString());
        await bench.WaitUntilReadyAsync();
        return bench;
    }

    /// <summary>Until the reference data is loaded, so that the page computes.</summary>
    public Task WaitUntilReadyAsync() => Assertions.Expect(Page.Locator("#edition")).ToContainTextAsync("Reference data");

    public async Task ReloadAsync()
    {
        await Page.ReloadAsync();
        await WaitUntilReadyAsync();
    }

    /// <summary>Enters a pile as a cook would.</summary>
    public async Task EnterAsync(string formula, string cut, string pile, string? trimLoss = null)
    {
        await Page.GetByLabel("Formula").SelectOptionAsync(formula);
        await Page.GetByLabel("Cut").SelectOptionAsync(cut);
        await Page.GetByLabel("Weights, one a line").FillAsync(pile);
        if (trimLoss is not null)
        {
            await Page.GetByRole(AriaRole.Radio, new PageGetByRoleOptions { Name = "Purchase" }).CheckAsync();
            await Page.GetByLabel("Trim loss, %").FillAsync(trimLoss);
        }
    }

    /// <summary>Until the page's files are all on the device, as after one visit.</summary>
    public Task WaitUntilKeptAsync() => Page.WaitForFunctionAsync("() => navigator.serviceWorker.controller?.state === 'activated'");

    /// <summary>Until the formula is on the device.</summary>
    public Task WaitUntilKeptAsync(string formula) => Page.WaitForFunctionAsync(
        "async id => (await (await import('/js/kitchen.js')).keptFormula(id)) !== undefined", formula);

    public ValueTask DisposeAsync() => _context.DisposeAsync();
}
