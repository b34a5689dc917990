using System.Globalization;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json.Nodes;
using RubLab.Page.Tests.Harness;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed class AgreementTests(Published published)
{
    private const int Seed = 20260114;
    private const int Piles = 100;
    private const double Noise = 1e-12;

    private static readonly string[] Cuts = ["beef-brisket", "pork-shoulder", "lamb-shoulder", "chicken-leg", "turkey-breast"];
    private static readonly string[] Units = ["g", "kg", "oz", "lb"];
    private static readonly string[] Steps = ["0.1 g", "1 g", "5 g", "0.05 oz"];

    [RequiresChromiumFact]
    public async Task Page_and_server_give_the_same_answer_to_a_hundred_piles()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        var random = new Random(Seed);
        var ids = (await GetAsync("v1/formulas"))["items"]!.AsArray().Select(item => item!["id"]!.GetValue<string>()).ToList();
        var pieces = 0;
        for (var pile = 0; pile < Piles; pile++)
        {
            var chosen = Enumerable.Range(0, random.Next(1, 4)).Select(i => ids[(pile + (i * 7)) % ids.Count]).ToList();
            var request = RequestOf(random, chosen);
            var formulas = new JsonObject();
            foreach (var id in chosen)
            {
                formulas[id] = await GetAsync($"v1/formulas/{id}");
            }

            using var body = new StringContent(request.ToJsonString(), Encoding.UTF8, "application/json");
            using var answer = await published.Server.Http.PostAsync(new Uri("v1/batch-sheets", UriKind.Relative), body);
            var server = await answer.Content.ReadAsStringAsync();
            var page = await bench.Page.EvaluateAsync<string>(
                "async ([request, formulas]) => JSON.stringify((await import('/js/engine.js')).computeSheet(JSON.parse(request), JSON.parse(formulas)).ok)",
                new[] { request.ToJsonString(), formulas.ToJsonString() });

            Assert.True(answer.IsSuccessStatusCode, $"pile {pile}: {request.ToJsonString()}\n{server}");
            AssertAlike(JsonNode.Parse(server)!, JsonNode.Parse(page)!);
            pieces += JsonNode.Parse(page)!["treatments"]![0]!["pieces"]!.AsArray().Count;
        }

        Assert.True(pieces > Piles, "The piles are too small to compare anything.");
    }

    [RequiresChromiumFact]
    public async Task Page_and_server_refuse_alike()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        var request = JsonNode.Parse("""
            { "pile": [ { "cut": "unicorn", "pieces": [ { "weight": { "value": -1, "unit": "stone" } } ], "trimLoss": { "value": 5, "unit": "%" } } ],
              "treatments": [ { "formulaId": "nowhere" } ], "overage": { "value": 1000, "unit": "%" } }
            """)!;
        using var body = new StringContent(request.ToJsonString(), Encoding.UTF8, "application/json");
        using var answer = await published.Server.Http.PostAsync(new Uri("v1/batch-sheets", UriKind.Relative), body);
        var server = (await answer.Content.ReadFromJsonAsync<JsonNode>())!["errors"]!;
        var page = await bench.Page.EvaluateAsync<string>(
            "async request => JSON.stringify((await import('/js/engine.js')).computeSheet(JSON.parse(request), {}).errors)", request.ToJsonString());

        Assert.Equal(422, (int)answer.StatusCode);
        Assert.True(server.AsArray().Count >= 4);
        Assert.Equal(NumbersAndWords(server), NumbersAndWords(JsonNode.Parse(page)!));
    }

    private async Task<JsonNode> GetAsync(string path) => (await published.Server.Http.GetFromJsonAsync<JsonNode>(new Uri(path, UriKind.Relative)))!;

    // What is linear in the weights is equal to the bit; coverage and layer stand on a power, and may differ in the last ones.
    private static void AssertAlike(JsonNode server, JsonNode page)
    {
        var (theirs, ours) = (NumbersAndWords(server), NumbersAndWords(page));
        Assert.Equal(theirs.Count, ours.Count);
        foreach (var (expected, actual) in theirs.Zip(ours).Where(pair => pair.First != pair.Second))
        {
            Assert.Matches("^/treatments/[0-9]+/coverage/", expected);
            var (a, b) = (Figure(expected), Figure(actual));
            Assert.InRange(Math.Abs(a - b), 0, Noise * Math.Abs(a));
        }
    }

    private static double Figure(string leaf) => double.Parse(leaf[(leaf.LastIndexOf('(') + 1)..^1], CultureInfo.InvariantCulture);

    private static JsonObject RequestOf(Random random, List<string> formulas)
    {
        var step = Pick(random, Steps).Split(' ');
        var cuts = Cuts.OrderBy(_ => random.Next()).Take(random.Next(1, 4));
        return new JsonObject
        {
            ["pile"] = new JsonArray(cuts.Select(cut => (JsonNode)LineOf(random, cut)).ToArray()),
            ["treatments"] = new JsonArray(formulas.Select(id => (JsonNode)new JsonObject { ["formulaId"] = id }).ToArray()),
            ["weighingStep"] = Quantity(double.Parse(step[0], CultureInfo.InvariantCulture), step[1]),
            ["overage"] = Quantity(Math.Round(random.NextDouble() * 20, 1), "%"),
            ["portion"] = Quantity(random.Next(80, 300), "g"),
        };
    }

    private static JsonObject LineOf(Random random, string cut)
    {
        var isPurchase = random.Next(2) == 0;
        var line = new JsonObject
        {
            ["cut"] = cut,
            ["weightIs"] = isPurchase ? "purchase" : "green",
            ["pieces"] = new JsonArray(Enumerable.Range(0, random.Next(1, 40)).Select(_ => (JsonNode)new JsonObject { ["weight"] = Weight(random) }).ToArray()),
        };
        if (isPurchase && random.Next(3) > 0)
        {
            line["trimLoss"] = Quantity(Math.Round(random.NextDouble() * 30, 2), "%");
        }

        return line;
    }

    private static JsonObject Weight(Random random)
    {
        var unit = Pick(random, Units);
        var grams = 200 + (random.NextDouble() * 8000);
        return Quantity(Math.Round(grams / unit switch { "g" => 1, "kg" => 1000, "oz" => 28, _ => 454 }, 3), unit);
    }

    private static JsonObject Quantity(double value, string unit) => new() { ["value"] = value, ["unit"] = unit };

    private static string Pick(Random random, string[] from) => from[random.Next(from.Length)];

    // Every number with all its bits, every word; only the way the two sides escape and space their text is left out.
    private static List<string> NumbersAndWords(JsonNode node) => Leaves("", node).ToList();

    private static IEnumerable<string> Leaves(string at, JsonNode? node) => node switch
    {
        JsonObject members => members.SelectMany(member => Leaves($"{at}/{member.Key}", member.Value)),
        JsonArray items => items.SelectMany((item, i) => Leaves($"{at}/{i}", item)),
        JsonValue value when value.TryGetValue<double>(out var number) => [$"{at} = {BitConverter.DoubleToInt64Bits(number):x16} ({number:R})"],
        _ => [$"{at} = {node}"],
    };
}
