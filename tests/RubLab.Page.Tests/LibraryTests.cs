using System.Net.Http.Json;
using System.Text;
using System.Text.Json.Nodes;
using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed class LibraryTests(Published published)
{
    [RequiresChromiumFact]
    public async Task An_edit_made_without_the_server_waits_and_is_sent_once_with_its_base()
    {
        await using var server = await Server.StartAsync(published.Program);
        await using var bench = await ReadyAsync(server);
        await bench.Page.Context.SetOfflineAsync(true);
        await EditAsync(bench, "1.2");
        await Expect(bench.Page.Locator("#saved")).ToContainTextAsync("Saved on this device.");
        await bench.ReloadAsync();
        await Expect(bench.Page.Locator("#amount-0")).ToHaveValueAsync("1.2");

        await bench.Page.Context.SetOfflineAsync(false);
        await bench.GoAsync("formulas");
        await bench.Page.EvaluateAsync("() => dispatchEvent(new Event('online'))");
        await Expect(bench.Page.Locator("#screen-formulas .hint").First).ToHaveTextAsync("As the server has them; a copy is on this device.");
        await Expect(bench.Page.Locator("#screen-formulas .flag")).ToHaveCountAsync(0);
        var stored = await ReadAsync(server);
        Assert.Equal(2, (int)stored["revision"]!);
        Assert.Equal(1.2, (double)stored["lines"]![0]!["amount"]!["value"]!);
    }

    [RequiresChromiumFact]
    public async Task A_new_formula_written_without_the_server_is_stored_once_and_keeps_its_place_on_the_bench()
    {
        await using var server = await Server.StartAsync(published.Program);
        await using var bench = await ReadyAsync(server);
        await bench.Page.Context.SetOfflineAsync(true);
        await EditAsync(bench, "1.1", "Ropewalk brine", "Save under a new name beside it");
        await bench.GoAsync("bench");
        await bench.Page.Locator("#formula-0").SelectOptionAsync(new Microsoft.Playwright.SelectOptionValue { Label = "Ropewalk brine (Dry brine), not sent yet" });
        await bench.Page.Locator("#cut-0").SelectOptionAsync("pork-shoulder");
        await bench.Page.Locator("#pile-0").FillAsync("10 kg");
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("145 g");
        await bench.Page.Context.SetOfflineAsync(false);
        await bench.Page.EvaluateAsync("() => { dispatchEvent(new Event('online')); dispatchEvent(new Event('online')); }");

        await Expect(bench.Page.Locator("#formula-0-state")).ToBeEmptyAsync();
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("145 g");
        var list = (await server.Http.GetFromJsonAsync<JsonNode>(new Uri("v1/formulas?limit=100", UriKind.Relative)))!["items"]!.AsArray();
        Assert.Single(list, item => (string)item!["name"]! == "Ropewalk brine");
    }

    [RequiresChromiumFact]
    public async Task A_formula_changed_on_both_sides_keeps_both_versions_side_by_side()
    {
        await using var server = await Server.StartAsync(published.Program);
        await using var bench = await ReadyAsync(server);
        await bench.Page.Context.SetOfflineAsync(true);
        await EditAsync(bench, "1.2");
        await ChangeAsync(server, 0.8);
        await bench.Page.Context.SetOfflineAsync(false);
        await bench.GoAsync("formulas");
        await bench.Page.EvaluateAsync("() => dispatchEvent(new Event('online'))");
        await Expect(bench.Page.Locator(".conflict h3")).ToHaveTextAsync("Two versions of Lockside towpath dry brine");
        await Expect(bench.Page.Locator(".conflict thead th")).ToHaveTextAsync(["Side by side", "Written here", "On the server, revision 2"]);
        await Expect(bench.Page.Locator(".conflict tr", new() { HasText = "Table, granulated" }).Locator("small")).ToHaveTextAsync(["Table, granulated", "1.2 %", "0.8 %"]);
        await bench.ReloadAsync();
        await Expect(bench.Page.Locator(".conflict")).ToHaveCountAsync(1);

        await bench.ClickAsync("Keep both: mine under another name");
        await Expect(bench.Page.Locator(".conflict")).ToHaveCountAsync(0);
        await Expect(bench.Page.Locator(".library")).ToContainTextAsync("Lockside towpath dry brine (2)");
        await Expect(bench.Page.Locator("#screen-formulas .flag")).ToHaveCountAsync(0);
        Assert.Equal(0.8, (double)(await ReadAsync(server))["lines"]![0]!["amount"]!["value"]!);
        Assert.Contains("Lockside towpath dry brine (2)", await server.Http.GetStringAsync(new Uri("v1/formulas?limit=100", UriKind.Relative)), StringComparison.Ordinal);
    }

    [RequiresChromiumFact]
    public async Task A_card_begun_on_an_older_revision_never_writes_over_a_newer_one()
    {
        await using var server = await Server.StartAsync(published.Program);
        await using var bench = await ReadyAsync(server);
        await bench.GoAsync("formula/lockside-dry-brine");
        await bench.Page.Locator("#amount-0").FillAsync("1.2");
        await bench.GoAsync("formula/lockside-pork-rub");
        await Expect(bench.Page.Locator("#name")).ToHaveValueAsync("Lockside pork rub");
        await ChangeAsync(server, 0.8);
        await bench.ReloadAsync();
        await bench.GoAsync("formulas");
        await Expect(bench.Page.Locator("#screen-formulas")).ToContainTextAsync("Dry brine, revision 2");
        await bench.GoAsync("formula/lockside-dry-brine");
        await Expect(bench.Page.Locator("#amount-0")).ToHaveValueAsync("1.2");
        await bench.ClickAsync("Save as a revision");

        await Expect(bench.Page.Locator("#saved")).ToContainTextAsync("There are two versions of this formula.");
        Assert.Equal(0.8, (double)(await ReadAsync(server))["lines"]![0]!["amount"]!["value"]!);
    }

    [RequiresChromiumFact]
    public async Task Two_tabs_that_edit_one_formula_keep_both_versions()
    {
        await using var server = await Server.StartAsync(published.Program);
        await using var bench = await ReadyAsync(server);
        await bench.GoAsync("formula/lockside-dry-brine");
        await Expect(bench.Page.Locator("#amount-0")).ToHaveValueAsync("1");
        var other = await bench.OpenTabAsync();
        await other.EvaluateAsync("() => { location.hash = '#/formula/lockside-dry-brine'; }");
        await Expect(other.Locator("#amount-0")).ToHaveValueAsync("1");
        await bench.Page.Context.SetOfflineAsync(true);
        await other.Locator("#amount-0").FillAsync("0.9");
        await other.Locator("#save").ClickAsync();
        await Expect(other.Locator("#saved")).ToContainTextAsync("Saved on this device.");
        await bench.Page.Locator("#amount-0").FillAsync("1.3");
        await bench.Page.Locator("#save").ClickAsync();
        await Expect(bench.Page.Locator("#saved")).ToContainTextAsync("There are two versions of this formula.");
        await bench.ClickAsync("See both");

        await Expect(bench.Page.Locator(".conflict tr", new() { HasText = "Table, granulated" }).Locator("small")).ToHaveTextAsync(["Table, granulated", "1.3 %", "0.9 %"]);
    }

    [RequiresChromiumFact]
    public async Task A_library_of_the_first_version_is_taken_over_whole()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.Page.Context.RouteAsync("**/v1/**", route => route.AbortAsync());
        await bench.LeaveAsync();
        await bench.Page.EvaluateAsync(
            """
            async () => {
              await new Promise(done => { const gone = indexedDB.deleteDatabase('rublab'); gone.onsuccess = done; gone.onblocked = done; });
              const db = await new Promise(done => {
                const opening = indexedDB.open('rublab', 1);
                opening.onupgradeneeded = () => opening.result.createObjectStore('kept');
                opening.onsuccess = () => done(opening.result);
              });
              const formula = { id: 'old', revision: 3, name: 'Kept since long', kind: 'rub', base: 'green', dose: { value: 10, unit: 'g/kg' },
                lines: [{ ingredient: 'salt', form: 'table', amount: { value: 1, unit: 'parts-by-mass' } }] };
              const writing = db.transaction('kept', 'readwrite');
              writing.objectStore('kept').put({ items: [formula], fetchedAt: '2026-01-01T00:00:00Z' }, 'formulas');
              writing.objectStore('kept').put(formula, 'formula/old');
              await new Promise(done => { writing.oncomplete = done; });
              db.close();
              sessionStorage.clear();
              localStorage.clear();
              localStorage.setItem('rublab.draft', JSON.stringify({ formula: 'old', cut: 'pork-shoulder', pile: '10 kg', weightIs: 'green', trimLoss: '', weighingStep: '1 g', overage: '5', portion: '170' }));
            }
            """);
        await bench.ComeBackAsync();

        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("100 g");
        Assert.Equal(3, await bench.Page.EvaluateAsync<int>("async () => (await indexedDB.databases()).find(db => db.name === 'rublab').version"));
    }

    [RequiresChromiumFact]
    public async Task A_library_of_a_newer_version_is_left_alone_and_said()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.LeaveAsync();
        await bench.Page.EvaluateAsync("() => new Promise(done => { const opening = indexedDB.open('rublab', 99); opening.onsuccess = () => { opening.result.close(); done(); }; })");
        await bench.ComeBackAsync();
        await bench.EnterAsync(published.ExampleFormula, "pork-shoulder", "10 kg");

        await Expect(bench.Page.Locator("#notices")).ToContainTextAsync("Another tab has a newer version of this page.");
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("220 g");
        Assert.Equal(99, await bench.Page.EvaluateAsync<int>("async () => (await indexedDB.databases()).find(db => db.name === 'rublab').version"));
    }

    [RequiresChromiumTheory]
    [InlineData("Object.defineProperty(window, 'indexedDB', { get() { throw new DOMException('no', 'SecurityError'); } });", "This browser keeps nothing for this page.")]
    [InlineData("IDBObjectStore.prototype.put = function () { throw new DOMException('full', 'QuotaExceededError'); };", "This device is full.")]
    public async Task Storage_that_is_denied_or_full_is_said_and_what_is_written_stays(string trouble, string said)
    {
        await using var server = await Server.StartAsync(published.Program);
        await using var bench = await Bench.OpenAsync(published.Browser, server.Address);
        await bench.WaitUntilKeptAsync();
        await bench.Page.AddInitScriptAsync(trouble);
        await bench.ReloadAsync();
        await Expect(bench.Page.Locator("#notices")).ToContainTextAsync(said);
        await bench.WaitUntilKeptAsync("lockside-dry-brine");
        await bench.Page.Context.SetOfflineAsync(true);
        await EditAsync(bench, "1.2");
        await Expect(bench.Page.Locator("#saved")).ToContainTextAsync("This browser does not keep what you enter");
        await Expect(bench.Page.Locator("#amount-0")).ToHaveValueAsync("1.2");
        await bench.Page.Context.SetOfflineAsync(false);
        await bench.Page.EvaluateAsync("() => dispatchEvent(new Event('online'))");
        await bench.GoAsync("formulas");
        await Expect(bench.Page.Locator("#screen-formulas .hint").First).ToHaveTextAsync("As the server has them; a copy is on this device.");
        await Expect(bench.Page.Locator("#screen-formulas .flag")).ToHaveCountAsync(0);

        Assert.Equal(1.2, (double)(await ReadAsync(server))["lines"]![0]!["amount"]!["value"]!);
    }

    private async Task<Bench> ReadyAsync(Server server)
    {
        var bench = await Bench.OpenAsync(published.Browser, server.Address);
        await bench.WaitUntilKeptAsync();
        await bench.WaitUntilKeptAsync("lockside-dry-brine");
        return bench;
    }

    private static async Task EditAsync(Bench bench, string salt, string? name = null, string button = "Save as a revision")
    {
        await bench.GoAsync("formula/lockside-dry-brine");
        await bench.Page.Locator("#amount-0").FillAsync(salt);
        if (name is not null)
        {
            await bench.Page.Locator("#name").FillAsync(name);
        }

        await bench.ClickAsync(button);
    }

    private static async Task<JsonNode> ReadAsync(Server server) =>
        (await server.Http.GetFromJsonAsync<JsonNode>(new Uri("v1/formulas/lockside-dry-brine", UriKind.Relative)))!;

    private static async Task ChangeAsync(Server server, double percent)
    {
        var path = new Uri("v1/formulas/lockside-dry-brine", UriKind.Relative);
        using var read = await server.Http.GetAsync(path);
        using var change = new HttpRequestMessage(HttpMethod.Put, path);
        change.Headers.IfMatch.Add(read.Headers.ETag!);
        var formula = new JsonObject
        {
            ["name"] = "Lockside towpath dry brine",
            ["kind"] = "dry-brine",
            ["lines"] = new JsonArray(new JsonObject
            {
                ["ingredient"] = "salt", ["form"] = "table", ["amount"] = new JsonObject { ["value"] = percent, ["unit"] = "%" },
            }),
        };
        change.Content = new StringContent(formula.ToJsonString(), Encoding.UTF8, "application/json");
        using var written = await server.Http.SendAsync(change);
        written.EnsureSuccessStatusCode();
    }
}
