using System.Text.Json;
using System.Text.Json.Nodes;
using RubLab.Api.Http;
using RubLab.Contracts.Json;
using RubLab.Contracts.Outputs;
using RubLab.Contracts.Salt;
using RubLab.Contracts.Sauces;
using RubLab.Contracts.Scaling;
using RubLab.Core.Catalogues;

namespace RubLab.Api.OpenApi;

/// <summary>Examples of computed documents.</summary>
internal static class BenchExamples
{
    public static IEnumerable<(string OperationId, OperationExample Example)> All(Catalogue catalogue)
    {
        var stored = FormulaExamples.Stored();
        FormulaLookup lookup = (id, _) => stored.GetValueOrDefault(id);
        var pile = ExampleBodies.Pile();
        var sheet = BatchSheets.Compute(pile, catalogue, lookup).Value!;
        yield return ("computeBatchSheet", new OperationExample
        {
            Summary = "Four shoulders and two chicken legs",
            Body = JsonSerializer.SerializeToNode(pile, RubLabJson.Default.BatchSheetRequest),
            Answer = JsonSerializer.SerializeToNode(sheet, RubLabJson.Default.BatchSheetResponse),
            Others = new Dictionary<string, JsonNode>
            {
                [Negotiation.Html] = string.Concat(PrintedSheet.Parts(sheet, catalogue)),
                [Negotiation.Csv] = string.Concat(SheetTables.Records(sheet, SheetTable.Pieces)),
            },
            Refusal = Problems.Of(BatchSheets.Compute(ExampleBodies.UnsoundPile(), catalogue, lookup).Log),
        });

        var stack = ExampleBodies.Stack();
        yield return ("checkSalt", new OperationExample
        {
            Summary = "A rub before and a mop during",
            Body = JsonSerializer.SerializeToNode(stack, RubLabJson.Default.SaltCheckRequest),
            Answer = JsonSerializer.SerializeToNode(SaltChecks.Compute(stack, catalogue, lookup).Value!, RubLabJson.Default.SaltCheckResponse),
            Refusal = Problems.Of(SaltChecks.Compute(ExampleBodies.UnsoundStack(), catalogue, lookup).Log),
        });

        yield return ("computeSauce", new OperationExample
        {
            Summary = "A glaze of vinegar and juices, boiled down",
            Body = JsonSerializer.SerializeToNode(ExampleBodies.Sauce(), RubLabJson.Default.SauceRequest),
            Answer = JsonSerializer.SerializeToNode(SauceAnswers.Compute(ExampleBodies.Sauce(), catalogue, lookup).Value!, RubLabJson.Default.SauceResponse),
            Refusal = Problems.Of(SauceAnswers.Compute(ExampleBodies.UnsoundSauce(), catalogue, lookup).Log),
        });
    }
}
