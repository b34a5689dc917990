using System.Text.Json;
using RubLab.Api.Http;
using RubLab.Contracts.Brining;
using RubLab.Contracts.Json;
using RubLab.Core.Catalogues;

namespace RubLab.Api.OpenApi;

/// <summary>The example of a liquid.</summary>
internal static class BrineExamples
{
    private const string Shoulder = """
        { "kind": "injection", "cut": "pork-shoulder", "meat": { "value": 6, "unit": "kg" }, "dose": { "value": 10, "unit": "%" }, "retained": { "low": 80, "typical": 90, "high": 100, "unit": "%" }, "temperature": { "value": 4, "unit": "C" },
          "lines": [ { "ingredient": "water", "amount": { "value": 2, "unit": "kg" } }, { "ingredient": "salt", "form": "table", "amount": { "value": 150, "unit": "g" } } ] }
        """;

    /// <summary>More salt than dissolves.</summary>
    private const string TooSalty = """
        { "kind": "injection", "cut": "pork-shoulder", "meat": { "value": 6, "unit": "kg" }, "dose": { "value": 4, "unit": "%" }, "retained": { "value": 90, "unit": "%" }, "temperature": { "value": 4, "unit": "C" },
          "lines": [ { "ingredient": "water" } ], "targets": [ { "ingredient": "salt", "reached": { "value": 15, "unit": "g/kg" } } ] }
        """;

    public static IEnumerable<(string OperationId, OperationExample Example)> All(Catalogue catalogue)
    {
        var shoulder = Read(Shoulder);
        yield return ("computeBrine", new OperationExample
        {
            Summary = "A shoulder pumped with a tenth of its weight",
            Body = JsonSerializer.SerializeToNode(shoulder, RubLabJson.Default.BrineRequest),
            Answer = JsonSerializer.SerializeToNode(Brines.Compute(shoulder, catalogue).Value!, RubLabJson.Default.BrineResponse),
            Refusal = Problems.Of(Brines.Compute(Read(TooSalty), catalogue).Log),
        });
    }

    private static BrineRequest Read(string json) => JsonSerializer.Deserialize(json, RubLabJson.Default.BrineRequest)!;
}
