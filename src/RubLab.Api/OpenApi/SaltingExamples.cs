using System.Text.Json;
using System.Text.Json.Nodes;
using RubLab.Api.Http;
using RubLab.Contracts.Json;
using RubLab.Contracts.Outputs;
using RubLab.Contracts.Timing;
using RubLab.Core.Catalogues;

namespace RubLab.Api.OpenApi;

/// <summary>The example of a salting time.</summary>
internal static class SaltingExamples
{
    private const string Loin = """
        { "method": "dry-brine", "shape": "slab", "thickness": { "value": 50, "unit": "mm" }, "facesTreated": 2, "species": "pork",
          "stages": [ { "temperature": { "value": 4, "unit": "C" }, "time": { "value": 24, "unit": "h" } } ] }
        """;

    /// <summary>A soak without its liquid, three faces across a thickness, and no time.</summary>
    private const string Unsound = """
        { "method": "soak", "shape": "slab", "thickness": { "value": 50, "unit": "mm" }, "facesTreated": 3, "species": "pork",
          "stages": [ { "temperature": { "value": 4, "unit": "C" }, "time": { "value": 0, "unit": "h" } } ] }
        """;

    public static IEnumerable<(string OperationId, OperationExample Example)> All(Catalogue catalogue)
    {
        var loin = Read(Loin);
        var answer = SaltingAnswers.Compute(loin, catalogue).Value!;
        yield return ("computeSaltingTimes", new OperationExample
        {
            Summary = "A day of dry brine on 50 mm of pork",
            Body = JsonSerializer.SerializeToNode(loin, RubLabJson.Default.SaltingTimesRequest),
            Answer = JsonSerializer.SerializeToNode(answer.Response, RubLabJson.Default.SaltingTimesResponse),
            Others = new Dictionary<string, JsonNode> { [Negotiation.Svg] = SaltingPlots.Of(answer, SaltingPlot.Profile) },
            Refusal = Problems.Of(SaltingAnswers.Compute(Read(Unsound), catalogue).Log),
        });
    }

    private static SaltingTimesRequest Read(string json) => JsonSerializer.Deserialize(json, RubLabJson.Default.SaltingTimesRequest)!;
}
