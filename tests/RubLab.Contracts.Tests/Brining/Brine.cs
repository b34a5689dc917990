using System.Text.Json;
using System.Text.Json.Nodes;
using RubLab.Contracts.Brining;
using RubLab.Contracts.Json;
using RubLab.Core.Faults;

namespace RubLab.Contracts.Tests.Brining;

/// <summary>Bodies of liquids, edited by pointer and computed.</summary>
internal static class Brine
{
    /// <summary>The injection printed in the contract.</summary>
    public const string Shoulder =
        """
        {"kind":"injection","cut":"pork-shoulder","meat":{"value":6,"unit":"kg"},"dose":{"value":10,"unit":"%"},
         "retained":{"low":80,"typical":90,"high":100,"unit":"%"},"temperature":{"value":4,"unit":"C"},
         "lines":[{"ingredient":"water","amount":{"value":2,"unit":"kg"}},{"ingredient":"salt","form":"table","amount":{"value":150,"unit":"g"}}]}
        """;

    /// <summary>100 g of salt and 1000 g of water around a kilogram of meat with 700 g of water.</summary>
    public const string Even =
        """
        {"kind":"soak","meat":{"value":1,"unit":"kg"},"meatWater":{"value":70,"unit":"%"},"temperature":{"value":4,"unit":"C"},
         "lines":[{"ingredient":"water","amount":{"value":1000,"unit":"g"}},{"ingredient":"sodium-chloride","amount":{"value":100,"unit":"g"}}]}
        """;

    public static JsonNode Answer(string body, string edits = "")
    {
        var result = Compute(body, edits);
        Assert.True(result.IsGood, string.Join('\n', result.Log.Faults.Select(f => $"{f.Pointer} {f.Code} {f.Detail}")));
        return JsonNode.Parse(JsonSerializer.Serialize(result.Value, RubLabJson.Default.BrineResponse))!;
    }

    public static Result<BrineResponse> Compute(string body, string edits = "") => Brines.Compute(
        JsonSerializer.Deserialize(Document.Of(body).Edit(edits).Json, RubLabJson.Default.BrineRequest)!, Seed.Catalogue);

    public static IReadOnlyList<string> Faults(string body, string edits) => Document.Faults(Compute(body, edits).Log);

    public static IReadOnlyList<string> Codes(this JsonNode answer) => answer["findings"]!.AsArray().Select(f => (string)f!["code"]!).ToList();

    public static JsonNode Of(this JsonNode answer, string ingredient) =>
        answer["reached"]!.AsArray().Single(r => (string)r!["ingredient"]! == ingredient)!;

    public static string Text(this JsonNode? node) => node!.ToJsonString();
}
