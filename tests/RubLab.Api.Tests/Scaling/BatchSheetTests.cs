using System.Net;
using System.Text.Json.Nodes;
using RubLab.Api.Tests.Engines;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Scaling;

public class BatchSheetTests(Server server) : IClassFixture<Server>
{
    private const string Path = "/v1/batch-sheets";

    [EngineFact]
    public async Task The_body_of_the_contract_gives_the_answer_of_the_contract()
    {
        var sheet = (await server.PostAsync(Path, Bodies.Sheet)).Succeeded().Json;

        Assert.Equal("weighed", (string)sheet["status"]!);
        AssertJson("""{"value":13856,"unit":"g"}""", sheet["greenWeight"]);
        var treatment = Assert.Single(sheet["treatments"]!.AsArray())!;
        Assert.Equal("Lockside pork rub", (string)treatment["name"]!);
        Assert.Equal("rub", (string)treatment["kind"]!);
        AssertJson("""{"value":22,"unit":"g/kg"}""", treatment["dose"]);
        AssertJson("""{"value":291,"unit":"g"}""", treatment["onMeat"]);
        AssertJson("""{"value":306,"unit":"g"}""", treatment["toMix"]);
        Assert.Equal("2026.3", (string)sheet["dataVersion"]!);
        Assert.IsType<JsonArray>(sheet["findings"]);
        Assert.IsType<JsonArray>(sheet["cautions"]);
    }

    [EngineFact]
    public async Task The_lines_of_the_contract_run_up_to_what_is_mixed()
    {
        var lines = (await server.PostAsync(Path, Bodies.Sheet)).Succeeded().Json["treatments"]![0]!["lines"]!;

        AssertJson("""{"value":8.8,"unit":"g/kg"}""", lines[0]!["ratio"]);
        Assert.Equal(("salt", "table"), ((string)lines[0]!["ingredient"]!, (string)lines[0]!["form"]!));
        AssertJson("""{"value":122,"unit":"g"}""", lines[0]!["toMix"]);
        AssertJson("""{"value":122,"unit":"g"}""", lines[0]!["runningTotal"]);
        AssertJson("""{"value":184,"unit":"g"}""", lines[1]!["toMix"]);
        AssertJson("""{"value":306,"unit":"g"}""", lines[1]!["runningTotal"]);
        Assert.Equal(["text", "low", "high", "unit", "roundingError"], lines[0]!["spoon"]!.AsObject().Select(m => m.Key));
    }

    [EngineFact]
    public async Task The_pieces_of_the_contract_are_numbered_and_sum_to_what_goes_on()
    {
        var treatment = (await server.PostAsync(Path, Bodies.Sheet)).Succeeded().Json["treatments"]![0]!;

        var pieces = treatment["pieces"]!.AsArray();
        AssertJson("""{"number":1,"line":"shoulders","greenWeight":{"value":3312,"unit":"g"},"amount":{"value":73,"unit":"g"}}""", pieces[0]);
        Assert.Equal([1, 2, 3, 4], pieces.Select(p => (int)p!["number"]!));
        Assert.Equal(291m, pieces.Sum(p => (decimal)p!["amount"]!["value"]!));
    }

    [EngineFact]
    public async Task The_ledgers_of_the_contract_are_those_of_the_contract()
    {
        var salt = (await server.PostAsync(Path, Bodies.Sheet)).Succeeded().Json["salt"]!.AsArray();

        Assert.Equal(["shoulders", "legs"], salt.Select(l => (string)l!["line"]!));
        var ledger = salt[0]!["ledger"]!;
        AssertJson("""{"low":7.8,"typical":8.24,"high":8.67,"unit":"g/kg"}""", ledger["saltPerKgGreen"]);
        AssertJson("""{"value":8.8,"unit":"g/kg"}""", ledger["saltWeighedPerKgGreen"]);
        Assert.Equal("mg", (string)ledger["sodiumPerPortion"]!["unit"]!);
        var entry = ledger["entries"]![0]!;
        Assert.Equal((0, "salt", "table"), ((int)entry["treatment"]!, (string)entry["ingredient"]!, (string)entry["form"]!));
        AssertJson("""{"low":0,"typical":0,"high":0,"unit":"g/kg"}""", salt[1]!["ledger"]!["saltPerKgGreen"]);
    }

    [EngineFact]
    public async Task Checks_carry_every_member_of_the_contract()
    {
        var checks = (await server.PostAsync(Path, Bodies.Sheet)).Succeeded().Json["salt"]![0]!["ledger"]!["checks"]!.AsArray();

        Assert.NotEmpty(checks);
        Assert.All(checks, check =>
        {
            string[] needed = ["id", "title", "base", "verdict", "typicalVerdict", "unit", "sourceId", "locator", "confidence", "advice"];
            Assert.Empty(needed.Except(check!.AsObject().Select(m => m.Key)));
            Assert.Contains((string)check["verdict"]!, (string[])["within", "below", "above", "cannot-tell"]);
        });
    }

    [EngineFact]
    public async Task A_label_comes_back_on_its_piece()
    {
        var body = Bodies.Sheet.Replace("""["shoulders"]""", """["legs"]""", StringComparison.Ordinal);

        var pieces = (await server.PostAsync(Path, body)).Succeeded().Json["treatments"]![0]!["pieces"]!.AsArray();

        Assert.Equal([5, 6], pieces.Select(p => (int)p!["number"]!));
        Assert.Equal([null, "blue tag"], pieces.Select(p => (string?)p!["label"]));
    }

    [EngineFact]
    public async Task Pieces_none_leaves_the_pieces_out_and_changes_nothing_else()
    {
        var all = (await server.PostAsync(Path, Bodies.Sheet)).Succeeded().Json;
        var none = (await server.PostAsync(Path, Bodies.Sheet.Replace("\"all\"", "\"none\"", StringComparison.Ordinal))).Succeeded().Json;

        Assert.True(all["treatments"]![0]!.AsObject().Remove("pieces"));
        Assert.True(JsonNode.DeepEquals(all, none));
    }

    [EngineFact]
    public async Task A_check_answers_with_the_ledgers_and_nothing_to_weigh()
    {
        var sheet = (await server.PostAsync(Path, Bodies.Sheet)).Succeeded().Json;
        var check = (await server.PostAsync(Path, Bodies.Sheet.Replace("\"pieces\":\"all\"", "\"purpose\":\"check\"", StringComparison.Ordinal))).Succeeded().Json;

        Assert.Empty(check["treatments"]!.AsArray());
        Assert.True(JsonNode.DeepEquals(sheet["salt"], check["salt"]));
    }

    [EngineFact]
    public async Task A_purchase_weight_without_trim_plans_and_does_not_weigh()
    {
        var body = Bodies.Sheet.Replace(""","trimLoss":{"value":8,"unit":"%"}""", "", StringComparison.Ordinal);

        Assert.Equal("planned", (string)(await server.PostAsync(Path, body)).Succeeded().Json["status"]!);
    }

    [EngineFact]
    public async Task A_stored_formula_gives_the_sheet_of_the_same_formula_inline()
    {
        var id = (string)(await server.PostAsync("/v1/formulas", Bodies.Formula)).Succeeded(HttpStatusCode.Created).Json["id"]!;
        var changed = Bodies.Formula.Replace("\"value\":22", "\"value\":11", StringComparison.Ordinal);
        (await server.PutAsync($"/v1/formulas/{id}", changed, ("If-Match", "*"))).Succeeded();
        var byRevision = Bodies.Sheet.Replace($"\"formula\":{Bodies.Formula}", $"\"formulaId\":\"{id}\",\"revision\":1", StringComparison.Ordinal);
        var latest = Bodies.Sheet.Replace($"\"formula\":{Bodies.Formula}", $"\"formulaId\":\"{id}\"", StringComparison.Ordinal);

        var inline = (await server.PostAsync(Path, Bodies.Sheet)).Succeeded().Json;
        Assert.True(JsonNode.DeepEquals(inline["treatments"], (await server.PostAsync(Path, byRevision)).Succeeded().Json["treatments"]));
        AssertJson("""{"value":146,"unit":"g"}""", (await server.PostAsync(Path, latest)).Succeeded().Json["treatments"]![0]!["onMeat"]);
    }

    [EngineTheory]
    [InlineData("no-such-formula", "unknown-formula")]
    [InlineData("", "bad-id")]
    [InlineData("lockside-pork-rub\\u0000", "bad-id")]
    [InlineData("'; DROP TABLE formulas; --", "bad-id")]
    public async Task A_formula_that_is_not_stored_is_named_where_it_stands(string id, string code)
    {
        var body = $$$"""{"pile":[{"cut":"beef-brisket","count":1,"weightEach":{"value":5,"unit":"kg"}}],"treatments":[{"formulaId":"{{{id}}}"}]}""";

        await server.RefusedAsync(
            await server.PostAsync(Path, body), HttpStatusCode.UnprocessableEntity, code, "/treatments/0/formulaId");
    }

    [EngineFact]
    public async Task Every_broken_rule_is_named_at_once()
    {
        const string Body = """
            {"pile":[{"cut":"unicorn","count":0,"weightEach":{"value":-5,"unit":"stone"}}],"treatments":[{"on":["nowhere"]}],
             "weighingStep":{"value":1,"unit":"mL"},"overage":{"value":500,"unit":"%"},"pieces":"some"}
            """;

        var errors = await server.RefusedAsync(await server.PostAsync(Path, Body), HttpStatusCode.UnprocessableEntity);

        string[] expected =
        [
            "/weighingStep/unit unit-not-allowed", "/overage/value out-of-range", "/pieces unknown-word", "/pile/0/cut unknown-cut",
            "/pile/0/weightEach/unit unknown-unit", "/pile/0/count out-of-range", "/treatments/0 one-or-the-other",
        ];
        Assert.Empty(expected.Except(errors.Select(e => $"{e!["pointer"]} {e["code"]}")));
        var unit = errors.Single(e => (string)e!["pointer"]! == "/pile/0/weightEach/unit")!;
        Assert.Contains("kg", unit["parameters"]!["allowed"]!.AsArray().Select(a => (string)a!));
    }

    private static void AssertJson(string expected, JsonNode? actual) =>
        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(expected), actual), $"Expected {expected}, not {actual?.ToJsonString()}.");
}
