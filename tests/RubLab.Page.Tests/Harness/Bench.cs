using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace RubLab.Page.Tests.Harness;

/// <summary>One visitor with a browser profile of their own, and what happened behind the page.</summary>
public sealed partial class Bench : IAsyncDisposable
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
        var entry = Page.Locator("#pile-form");
        await entry.GetByLabel(FormulaLabel()).SelectOptionAsync(formula);
        await entry.GetByLabel("Cut", new LocatorGetByLabelOptions { Exact = true }).SelectOptionAsync(cut);
        await entry.GetByLabel("Weights, one a line").FillAsync(pile);
        if (trimLoss is not null)
        {
            await entry.GetByRole(AriaRole.Radio, new LocatorGetByRoleOptions { Name = "Purchase" }).CheckAsync();
            await entry.GetByLabel("Trim loss, %").FillAsync(trimLoss);
        }
    }

    /// <summary>Goes from field to field with the Tab key until one is reached.</summary>
    public async Task TabToAsync(string selector)
    {
        var target = Page.Locator(selector);
        for (var presses = 0; presses < 60; presses++)
        {
            if (await target.EvaluateAsync<bool>("e => e === document.activeElement"))
            {
                return;
            }

            await Page.Keyboard.PressAsync("Tab");
        }

        Assert.Fail($"{selector} cannot be reached with the Tab key.");
    }

    public Task ClickAsync(string text) => Page.GetByText(text, new PageGetByTextOptions { Exact = true }).First.ClickAsync();

    /// <summary>Leaves the page for a file of the same origin, where nothing else touches what the device keeps.</summary>
    public Task LeaveAsync() => Page.GotoAsync(new Uri(Address, "mark.svg").ToString());

    public async Task ComeBackAsync()
    {
        await Page.GotoAsync(Address.ToString());
        await WaitUntilReadyAsync();
    }

    /// <summary>Another tab of the same visitor.</summary>
    public async Task<IPage> OpenTabAsync()
    {
        var page = await _context.NewPageAsync();
        await page.GotoAsync(Address.ToString());
        await Assertions.Expect(page.Locator("#edition")).ToContainTextAsync("Reference data");
        return page;
    }

    /// <summary>Opens another screen as its link would.</summary>
    public async Task GoAsync(string screen)
    {
        await Page.EvaluateAsync("address => { location.hash = address; }", $"#/{screen}");
        await Page.WaitForFunctionAsync(
            "id => { const screen = document.getElementById(id); return screen && !screen.hidden && screen.innerText.trim() !== ''; }", $"screen-{screen.Split('/')[0]}");
    }

    /// <summary>Until the page's files are all on the device, as after one visit.</summary>
    public Task WaitUntilKeptAsync() => Page.WaitForFunctionAsync("() => navigator.serviceWorker.controller?.state === 'activated'");

    /// <summary>Until the formula is on the device.</summary>
    public Task WaitUntilKeptAsync(string formula) => Page.EvaluateAsync(
        """
        async id => {
          const { keptFormula } = await import('/js/kept/kitchen.js');
          while (await keptFormula(id) === undefined) {
            await new Promise(done => setTimeout(done, 50));
          }
        }
        """,
        formula).WaitAsync(TimeSpan.FromSeconds(30));

    [GeneratedRegex("^Formula( 1)?$")]
    private static partial Regex FormulaLabel();

    public ValueTask DisposeAsync() => _context.DisposeAsync();
}
