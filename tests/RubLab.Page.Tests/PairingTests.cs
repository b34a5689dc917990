using System.Net.Http.Json;
using System.Text.Json.Nodes;
using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed class PairingTests(Published published)
{
    private const string Key = "a-key-of-more-than-twenty-letters";

    [RequiresChromiumFact]
    public async Task A_device_pairs_works_is_unpaired_keeps_its_edit_and_sends_it_once_paired_again()
    {
        // With a key set nobody is let in for being on the machine: the page stands there as a phone does.
        await using var server = await Server.StartAsync(published.Program, Key);
        await using var phone = await Bench.OpenAsync(published.Browser, server.Address, 360);
        await Expect(phone.Page.Locator("#notices")).ToContainTextAsync("The server does not know this device yet.");
        await phone.ClickAsync("Enter a code");
        await phone.Page.Locator("#pairing-code").FillAsync("hello");
        await phone.ClickAsync("Pair this device");
        await Expect(phone.Page.Locator("#pairing-code-fault")).Not.ToBeEmptyAsync();
        await PairAsync(phone, server);
        await phone.WaitUntilKeptAsync("lockside-dry-brine");
        await phone.WaitUntilKeptAsync();
        await Expect(phone.Page.Locator("#notices")).ToBeEmptyAsync();

        await phone.Page.Context.SetOfflineAsync(true);
        await phone.GoAsync("formula/lockside-dry-brine");
        await phone.Page.Locator("#amount-0").FillAsync("1.2");
        await phone.ClickAsync("Save as a revision");
        await Expect(phone.Page.Locator("#saved")).ToContainTextAsync("Saved on this device.");
        await UnpairAsync(server);
        await phone.Page.Context.SetOfflineAsync(false);
        await phone.Page.EvaluateAsync("() => dispatchEvent(new Event('online'))");
        await Expect(phone.Page.Locator("#notices")).ToContainTextAsync("This device is no longer paired.");
        await Expect(phone.Page.Locator("#notices")).ToContainTextAsync("was not sent is safe");
        await Expect(phone.Page.Locator("#notices")).ToContainTextAsync("Enter a code");
        Assert.Equal("gone", await phone.Page.EvaluateAsync<string>("async () => (await (await import('/js/kept/kitchen.js')).keptFormula('lockside-pork-rub')) ? 'kept' : 'gone'"));

        await phone.GoAsync("pairing");
        await PairAsync(phone, server);
        await phone.GoAsync("formulas");
        await Expect(phone.Page.Locator("#screen-formulas .flag")).ToHaveCountAsync(0);
        var stored = (await server.Http.GetFromJsonAsync<JsonNode>(new Uri("v1/formulas/lockside-dry-brine", UriKind.Relative)))!;
        Assert.Equal((2, 1.2), ((int)stored["revision"]!, (double)stored["lines"]![0]!["amount"]!["value"]!));
    }

    [RequiresChromiumFact]
    public async Task The_machine_itself_shows_a_code_lists_devices_and_unpairs_them()
    {
        await using var server = await Server.StartAsync(published.Program);
        await using var bench = await Bench.OpenAsync(published.Browser, server.Address);
        await bench.GoAsync("own");
        await bench.ClickAsync("Pair and unpair devices");
        await bench.Page.Locator("#device-name").FillAsync("Stove phone");
        await bench.ClickAsync("Show a code");
        var code = await bench.Page.Locator(".code").InnerTextAsync();
        Assert.Matches("^[34679CDFHJKMNPRTVWXY]{4}-[34679CDFHJKMNPRTVWXY]{4}$", code);

        using var paired = await server.Http.PostAsJsonAsync(new Uri("v1/sessions", UriKind.Relative), new { code });
        Assert.Equal(201, (int)paired.StatusCode);
        await bench.ReloadAsync();
        await Expect(bench.Page.Locator("#device-list li")).ToContainTextAsync("Stove phone");
        await bench.Page.GetByLabel("Unpair Stove phone").ClickAsync();
        await Expect(bench.Page.Locator("#device-list")).ToHaveTextAsync("No device is paired.");
        Assert.Empty((await server.Http.GetFromJsonAsync<JsonNode>(new Uri("v1/sessions", UriKind.Relative)))!["items"]!.AsArray());
    }

    private static async Task PairAsync(Bench phone, Server server)
    {
        using var made = await server.Http.PostAsJsonAsync(new Uri("v1/pairing-codes", UriKind.Relative), new { name = "Stove phone" });
        var code = (string)(await made.Content.ReadFromJsonAsync<JsonNode>())!["code"]!;
        await phone.Page.Locator("#pairing-code").FillAsync(code.ToLowerInvariant().Replace('-', ' '));
        await phone.ClickAsync("Pair this device");
        await Expect(phone.Page.Locator("#pairing-state")).ToHaveTextAsync("This device is paired as Stove phone.");
    }

    private static async Task UnpairAsync(Server server)
    {
        var session = (await server.Http.GetFromJsonAsync<JsonNode>(new Uri("v1/sessions", UriKind.Relative)))!["items"]![0]!;
        using var gone = await server.Http.DeleteAsync(new Uri($"v1/sessions/{session["id"]}", UriKind.Relative));
        Assert.Equal(204, (int)gone.StatusCode);
    }
}
