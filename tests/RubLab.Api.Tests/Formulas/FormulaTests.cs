using System.Net;
using System.Text.Json.Nodes;
using RubLab.Api.Hosting;
using RubLab.Api.Tests.Engines;
using RubLab.Api.Tests.Hosting;
using RubLab.Storage;
using RubLab.Storage.Formulas;

namespace RubLab.Api.Tests.Formulas;

public class FormulaTests(Server server) : IClassFixture<Server>
{
    [EngineFact]
    public async Task A_created_formula_is_where_the_answer_says_it_is()
    {
        var created = (await server.PostAsync("/v1/formulas", Bodies.Formula)).Succeeded(HttpStatusCode.Created);

        var location = created.Header("Location")!;
        Assert.Equal($"/v1/formulas/{created.Json["id"]}", location);
        var read = (await server.GetAsync(location)).Succeeded();
        Assert.Equal(created.Bytes, read.Bytes);
        Assert.Equal(created.Tag, read.Tag);
        Assert.Equal(1, (int)read.Json["revision"]!);
    }

    [EngineTheory]
    [InlineData("Brücken-Rub", "brucken-rub")]
    [InlineData("Rôti à l'ail  –  Straße", "roti-a-lail-strasse")]
    [InlineData("ŁÓDŹ Æble", "lodz-aeble")]
    [InlineData("Bru\u0308cke", "brucke")]
    [InlineData("塩", "formula")]
    public async Task An_id_is_the_name_in_plain_letters_and_eight_digits(string name, string word)
    {
        var body = JsonNode.Parse(Bodies.Formula)!;
        body["name"] = name;

        var created = (await server.PostAsync("/v1/formulas", body.ToJsonString())).Succeeded(HttpStatusCode.Created);

        Assert.Matches($"^{word}-[0-9a-f]{{8}}$", (string)created.Json["id"]!);
    }

    [EngineTheory]
    [InlineData(Bodies.Formula)]
    [InlineData(Bodies.Card)]
    public async Task A_formula_is_read_back_as_it_was_authored(string body)
    {
        var created = (await server.PostAsync("/v1/formulas", body)).Succeeded(HttpStatusCode.Created);

        AssertHolds(JsonNode.Parse(body)!, (await server.GetAsync(created.Header("Location")!)).Succeeded().Json, "");
    }

    [EngineFact]
    public async Task Lines_come_with_ratio_share_and_density_and_the_formula_with_its_salt()
    {
        var formula = (await server.PostAsync("/v1/formulas", Bodies.Formula)).Succeeded(HttpStatusCode.Created).Json;

        var salt = formula["lines"]![0]!;
        Assert.Equal("""{"low":8.8,"typical":8.8,"high":8.8,"unit":"g/kg"}""", salt["ratio"]!.ToJsonString());
        Assert.Equal("""{"low":40,"typical":40,"high":40,"unit":"%"}""", salt["share"]!.ToJsonString());
        Assert.Equal("g/mL", (string)salt["density"]!["unit"]!);
        Assert.Equal("""{"value":22,"unit":"g/kg"}""", formula["totalRatio"]!.ToJsonString());

        // Two parts of table salt, 98.5 % sodium chloride, in five of the mix; pepper brings next to none.
        Assert.Equal(39.4, (double)formula["saltShare"]!["typical"]!, 0.1);
        Assert.Equal("%", (string)formula["saltShare"]!["unit"]!);
    }

    // Stored before a content was held to the name of its cure: it can be read and mended, and nothing is weighed by it.
    [EngineFact]
    public async Task A_stored_cure_whose_content_its_name_denies_is_shown_and_not_computed_with()
    {
        const string Weaker = """{"name":"Lock cure","kind":"dry-brine","lines":[{"ingredient":"cure-6-25","nitriteFraction":0.01,"amount":{"value":60,"unit":"g/kg"}}]}""";
        var id = $"lock-cure-{Guid.NewGuid():N}"[..18];
        await using (var work = await server.Database.BeginAsync(Intent.Write))
        {
            await work.Formulas.CreateAsync(LocalKitchen.Id, id, new FormulaContent("Lock cure", "dry-brine", Weaker));
            await work.CommitAsync();
        }

        AssertHolds(JsonNode.Parse(Weaker)!, (await server.GetAsync($"/v1/formulas/{id}")).Succeeded().Json, "");
        var sheet = await server.PostAsync(
            "/v1/batch-sheets",
            $$"""{"pile":[{"cut":"pork-loin","product":"other","pieces":[{"weight":{"value":1,"unit":"kg"} }] }],"treatments":[{"formulaId":"{{id}}"}] }""");
        Assert.Equal("/treatments/0/formulaId formula-not-sound", FaultOf(sheet));
        Assert.Equal("/lines/0/nitriteFraction cure-content-contradicted", FaultOf(await server.PostAsync("/v1/formulas", Weaker)));

        static string FaultOf(Answer answer)
        {
            var error = Assert.Single(ProblemDocument.Of(answer, HttpStatusCode.UnprocessableEntity)["errors"]!.AsArray())!;
            return $"{error["pointer"]} {error["code"]}";
        }
    }

    [EngineFact]
    public async Task A_card_in_cups_reads_back_with_bands()
    {
        var formula = (await server.PostAsync("/v1/formulas", Bodies.Card)).Succeeded(HttpStatusCode.Created).Json;

        foreach (var line in formula["lines"]!.AsArray())
        {
            var share = line!["share"]!;
            Assert.True((double)share["low"]! < (double)share["typical"]! && (double)share["typical"]! < (double)share["high"]!);
        }

        Assert.Null(formula["lines"]![1]!["form"]);
        Assert.Contains("density-spread", formula["findings"]!.AsArray().Select(f => (string)f!["code"]!));
    }

    [EngineFact]
    public async Task A_replaced_formula_has_the_next_revision_another_tag_and_the_new_content()
    {
        var created = (await server.PostAsync("/v1/formulas", Bodies.Formula)).Succeeded(HttpStatusCode.Created);
        var location = created.Header("Location")!;

        var replaced = (await server.PutAsync(location, Bodies.Card, ("If-Match", created.Tag!))).Succeeded();

        Assert.Equal(2, (int)replaced.Json["revision"]!);
        Assert.NotEqual(created.Tag, replaced.Tag);
        Assert.Equal("The old card", (string)replaced.Json["name"]!);
        var read = (await server.GetAsync(location, ("If-None-Match", created.Tag!))).Succeeded();
        Assert.Equal((replaced.Tag, replaced.Text), (read.Tag, read.Text));
    }

    [EngineFact]
    public async Task A_deleted_formula_is_gone_from_its_path_and_from_the_list()
    {
        var created = (await server.PostAsync("/v1/formulas", Bodies.Formula)).Succeeded(HttpStatusCode.Created);
        var location = created.Header("Location")!;
        Assert.Contains((string)created.Json["id"]!, await ListedAsync());

        var deleted = await server.DeleteAsync(location, ("If-Match", created.Tag!));

        Assert.Equal(HttpStatusCode.NoContent, deleted.Status);
        Assert.Empty(deleted.Bytes);
        Assert.DoesNotContain((string)created.Json["id"]!, await ListedAsync());
        await server.RefusedAsync(await server.GetAsync(location), HttpStatusCode.NotFound);
        await server.RefusedAsync(await server.PutAsync(location, Bodies.Formula, ("If-Match", "*")), HttpStatusCode.NotFound);
        await server.RefusedAsync(await server.DeleteAsync(location, ("If-Match", created.Tag!)), HttpStatusCode.NotFound);
    }

    [EngineFact]
    public async Task Revisions_never_change_and_outlive_their_formula()
    {
        var created = (await server.PostAsync("/v1/formulas", Bodies.Formula)).Succeeded(HttpStatusCode.Created);
        var location = created.Header("Location")!;
        var replaced = (await server.PutAsync(location, Bodies.Card, ("If-Match", created.Tag!))).Succeeded();
        (await server.DeleteAsync(location, ("If-Match", replaced.Tag!))).Succeeded(HttpStatusCode.NoContent);

        var list = (await server.GetAsync(location + "/revisions")).Succeeded().Json["items"]!.AsArray();
        Assert.Equal([1, 2], list.Select(r => (int)r!["revision"]!));
        Assert.Equal(["Lockside pork rub", "The old card"], list.Select(r => (string)r!["name"]!));
        Assert.Equal(created.Text, (await server.GetAsync(location + "/revisions/1")).Succeeded().Text);
        Assert.Equal(replaced.Text, (await server.GetAsync(location + "/revisions/2")).Succeeded().Text);
        foreach (var method in (HttpMethod[])[HttpMethod.Put, HttpMethod.Delete, HttpMethod.Post])
        {
            await server.RefusedAsync(
                await server.SendAsync(method, location + "/revisions/1", Bodies.Formula, ("If-Match", "*")), HttpStatusCode.MethodNotAllowed);
        }
    }

    [EngineTheory]
    [InlineData("/v1/formulas/none")]
    [InlineData("/v1/formulas/none/revisions")]
    [InlineData("/v1/formulas/none/revisions/1")]
    [InlineData("/v1/formulas/lockside-pork-rub/revisions/0")]
    [InlineData("/v1/formulas/lockside-pork-rub/revisions/2")]
    [InlineData("/v1/formulas/lockside-pork-rub/revisions/-1")]
    [InlineData("/v1/formulas/lockside-pork-rub/revisions/one")]
    [InlineData("/v1/formulas/lockside-pork-rub/revisions/99999999999999999999")]
    public async Task What_is_not_there_is_not_found(string path) =>
        await server.RefusedAsync(await server.GetAsync(path), HttpStatusCode.NotFound);

    [EngineFact]
    public async Task A_name_in_another_script_makes_a_formula_that_can_be_read()
    {
        var body = Bodies.Formula.Replace("Lockside pork rub", "ΑΛΑΤΙ 🍖 塩 Épice/…", StringComparison.Ordinal);

        var created = (await server.PostAsync("/v1/formulas", body)).Succeeded(HttpStatusCode.Created);

        Assert.Matches("^/v1/formulas/[a-z0-9-]+$", created.Header("Location")!);
        Assert.Equal("ΑΛΑΤΙ 🍖 塩 Épice/…", (string)(await server.GetAsync(created.Header("Location")!)).Succeeded().Json["name"]!);
    }

    private async Task<IEnumerable<string>> ListedAsync() =>
        (await server.GetAsync("/v1/formulas?limit=200")).Succeeded().Json["items"]!.AsArray().Select(f => (string)f!["id"]!);

    private static void AssertHolds(JsonNode authored, JsonNode? read, string at)
    {
        switch (authored)
        {
            case JsonObject members:
                foreach (var (name, value) in members)
                {
                    AssertHolds(value!, read?[name], $"{at}/{name}");
                }

                break;
            case JsonArray items:
                Assert.Equal(items.Count, read!.AsArray().Count);
                for (var i = 0; i < items.Count; i++)
                {
                    AssertHolds(items[i]!, read[i], $"{at}/{i}");
                }

                break;
            default:
                Assert.True(JsonNode.DeepEquals(authored, read), $"{at} is {read?.ToJsonString()}, not {authored.ToJsonString()}");
                break;
        }
    }
}
