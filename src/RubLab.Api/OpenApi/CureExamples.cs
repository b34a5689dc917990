using System.Text.Json;
using RubLab.Api.Http;
using RubLab.Contracts.Curing;
using RubLab.Contracts.Json;
using RubLab.Core.Catalogues;

namespace RubLab.Api.OpenApi;

/// <summary>The example of a cure.</summary>
internal static class CureExamples
{
    private const string Belly = """
        { "method": "dry", "cut": "pork-belly", "product": "bacon", "meat": { "value": 2, "unit": "kg" },
          "lines": [ { "ingredient": "cure-6-25" }, { "ingredient": "salt", "form": "table" }, { "ingredient": "sugar-brown", "amount": { "value": 10, "unit": "g/kg" } } ],
          "targets": [ { "ingredient": "cure-6-25", "additive": "nitrite", "reached": { "value": 150, "unit": "ppm" } }, { "ingredient": "salt", "additive": "sodium-chloride", "reached": { "value": 2.5, "unit": "%" } } ] }
        """;

    /// <summary>More nitrite than dry cured bacon may get.</summary>
    private const string TooMuch = """
        { "method": "dry", "cut": "pork-belly", "product": "bacon", "meat": { "value": 2, "unit": "kg" },
          "lines": [ { "ingredient": "cure-6-25", "amount": { "value": 10, "unit": "g" } } ] }
        """;

    public static IEnumerable<(string OperationId, OperationExample Example)> All(Catalogue catalogue)
    {
        var belly = Read(Belly);
        yield return ("computeCure", new OperationExample
        {
            Summary = "A belly cured dry, solved for nitrite and salt",
            Body = JsonSerializer.SerializeToNode(belly, RubLabJson.Default.CureRequest),
            Answer = JsonSerializer.SerializeToNode(Cures.Compute(belly, catalogue).Value!, RubLabJson.Default.CureResponse),
            Refusal = Problems.Of(Cures.Compute(Read(TooMuch), catalogue).Log),
        });
    }

    private static CureRequest Read(string json) => JsonSerializer.Deserialize(json, RubLabJson.Default.CureRequest)!;
}
