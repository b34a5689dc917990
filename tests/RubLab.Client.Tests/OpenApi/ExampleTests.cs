using System.Net.Http.Json;
using System.Text.Json.Nodes;

namespace RubLab.Client.Tests.OpenApi;

public sealed class ExampleTests(ServedDocument document) : IClassFixture<ServedDocument>
{
    private readonly SchemaChecks _checks = new(document.Schemas);

    [Fact]
    public void Every_body_and_every_good_answer_has_an_example() => Assert.All(document.Operations, o =>
    {
        var contents = o.Json["responses"]!.AsObject().Where(r => r.Key[0] == '2').Select(r => r.Value!["content"])
            .Append(o.Json["requestBody"]?["content"]).OfType<JsonObject>().SelectMany(c => c);
        Assert.All(contents, c => Assert.NotEmpty(c.Value!["examples"]!.AsObject()));
    });

    [Fact]
    public void Every_example_keeps_to_its_schema_and_has_no_member_of_its_own()
    {
        var checkedCount = 0;
        foreach (var (place, node) in ServedDocument.Walk(document.Root).Where(n => n.Node is JsonObject o && o.ContainsKey("schema")))
        {
            var examples = node["examples"] is JsonObject named ? named.Select(e => e.Value!["value"]) : [node["example"]];
            foreach (var example in examples.Where(e => e is not null))
            {
                var errors = _checks.Errors(node["schema"]!, example, isClosed: true);
                Assert.True(errors.Count == 0, $"{place}: {string.Join("; ", errors)}");
                checkedCount++;
            }
        }

        Assert.True(checkedCount > 60, $"Only {checkedCount} examples were found.");
    }

    [Theory]
    [InlineData("computeBatchSheet")]
    [InlineData("checkSalt")]
    [InlineData("computeBrine")]
    [InlineData("computeCure")]
    [InlineData("computeSaltingTimes")]
    [InlineData("convertMany")]
    [InlineData("planPurchase")]
    [InlineData("countPortions")]
    [InlineData("makeShoppingList")]
    public async Task The_answer_shown_is_what_the_server_answers_to_the_body_shown(string operationId)
    {
        var operation = document.Operations.Single(o => o.Id == operationId);
        var body = Example(operation.Json["requestBody"]!);
        var answer = await document.Kitchen.Http.PostAsync(operation.Path, JsonContent.Create(body));
        answer.EnsureSuccessStatusCode();
        AssertSame(Example(operation.Json["responses"]!["200"]!), await answer.Content.ReadFromJsonAsync<JsonNode>());
    }

    [Theory]
    [InlineData("getSource", "/v1/sources/usda-sr28")]
    [InlineData("getIngredient", "/v1/ingredients/black-pepper")]
    [InlineData("getCut", "/v1/cuts/pork-shoulder")]
    [InlineData("convert", "/v1/conversions?ingredient=black-pepper&form=ground&value=2&unit=tbsp&to=g")]
    [InlineData("getFormula", "/v1/formulas/lockside-pork-rub")]
    [InlineData("getFormulaRevision", "/v1/formulas/lockside-pork-rub/revisions/1")]
    [InlineData("listFormulas", "/v1/formulas?limit=2")]
    [InlineData("listSources", "/v1/sources?limit=2")]
    [InlineData("listIngredients", "/v1/ingredients?limit=2")]
    [InlineData("listCuts", "/v1/cuts?limit=2")]
    [InlineData("getHealth", "/health")]
    public async Task The_answer_shown_is_what_the_server_answers_but_for_times_and_cursors(string operationId, string path)
    {
        var shown = Example(document.Operations.Single(o => o.Id == operationId).Json["responses"]!["200"]!);
        AssertSame(shown, await document.Kitchen.Http.GetFromJsonAsync<JsonNode>(path));
    }

    [Theory]
    [InlineData("ingredients", "IngredientResponse")]
    [InlineData("cuts", "CutResponse")]
    [InlineData("sources", "SourceResponse")]
    [InlineData("formulas", "FormulaResponse")]
    public async Task Every_item_the_server_has_keeps_to_its_schema(string list, string schema)
    {
        var reference = new JsonObject { ["$ref"] = "#/components/schemas/" + schema };
        var page = await document.Kitchen.Http.GetFromJsonAsync<JsonNode>($"/v1/{list}?limit=200");
        var items = page!["items"]!.AsArray();
        Assert.NotEmpty(items);
        foreach (var item in items)
        {
            var answer = await document.Kitchen.Http.GetFromJsonAsync<JsonNode>($"/v1/{list}/{item!["id"]}");
            var errors = _checks.Errors(reference, answer, isClosed: true);
            Assert.True(errors.Count == 0, $"{item["id"]}: {string.Join("; ", errors)}");
        }
    }

    [Fact]
    public async Task The_refusals_shown_with_a_body_are_what_the_server_answers()
    {
        var unreadable = document.Root["components"]!["responses"]!["Unreadable"]!["content"]!["application/problem+json"]!["examples"]!;
        foreach (var (name, body) in new[] { ("unknownMember", """{"lines":[{"ingredient":"salt","weight":4}]}"""), ("notJson", """{"name":"Lockside pork rub",}""") })
        {
            using var content = new StringContent(body, System.Text.Encoding.UTF8, "application/json");
            var answer = await document.Kitchen.Http.PostAsync("/v1/formulas", content);
            AssertSame(unreadable[name]!["value"]!, await answer.Content.ReadFromJsonAsync<JsonNode>());
        }
    }

    private static JsonNode Example(JsonNode holder) => holder["content"]!["application/json"]!["examples"]!["lockside"]!["value"]!;

    private static void AssertSame(JsonNode shown, JsonNode? answered)
    {
        var expected = Timeless(shown);
        var actual = Timeless(answered!);
        Assert.True(JsonNode.DeepEquals(expected, actual), $"Shown: {expected.ToJsonString()}\nAnswered: {actual.ToJsonString()}");
    }

    private static JsonNode Timeless(JsonNode node)
    {
        var copy = node.DeepClone();
        foreach (var (_, inner) in ServedDocument.Walk(copy).ToList())
        {
            if (inner is JsonObject members)
            {
                foreach (var member in new[] { "updatedAt", "createdAt", "next" }.Where(members.ContainsKey))
                {
                    members[member] = "";
                }
            }
        }

        return copy;
    }
}
