using System.Text.Json;
using System.Text.Json.Nodes;
using RubLab.Api.Endpoints;
using RubLab.Api.Formulas;
using RubLab.Api.Hosting;
using RubLab.Api.Http;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Json;
using RubLab.Contracts.Listing;
using RubLab.Contracts.Outputs;
using RubLab.Contracts.Quantities;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;

namespace RubLab.Api.OpenApi;

/// <summary>Examples of the formula library, from the formulas every kitchen starts with.</summary>
internal static class FormulaExamples
{
    private const string Id = "lockside-pork-rub";
    private const string First = "2026-03-14T08:30:00.000Z";
    private const string Second = "2026-03-21T16:05:12.480Z";

    public static IEnumerable<(string OperationId, OperationExample Example)> All(Catalogue catalogue)
    {
        var json = RubLabJson.Default;
        var stored = Stored();
        var rub = stored[Id];
        var lighter = rub with { Dose = QuantityRequest.Of(20, "g/kg") };
        var refusal = Problems.Of(FormulaAnswers.Check(ExampleBodies.UnsoundRub(), catalogue).Log);

        var summaries = stored
            .Select(f => new FormulaSummary(f.Key, 1, f.Value.Name!, f.Value.Kind!, First))
            .OrderBy(f => f.Name, StringComparer.OrdinalIgnoreCase).Take(2).ToList();
        yield return ("listFormulas", new OperationExample
        {
            Summary = "With limit=2",
            Answer = JsonSerializer.SerializeToNode(
                new ListResponse<FormulaSummary>(summaries, ReferenceExamples.Cursors.Write("formulas", summaries[1].Name, summaries[1].Id)),
                json.ListResponseFormulaSummary),
            Refusal = ReferenceExamples.BadPage("formulas"),
        });

        yield return ("createFormula", new OperationExample
        {
            Summary = "A rub in parts",
            Body = JsonSerializer.SerializeToNode(ExampleBodies.Rub(), json.FormulaRequest),
            Answer = Read(ExampleBodies.Rub(), "lockside-pork-rub-7c1e9b04", 1, Second, catalogue),
            Refusal = refusal,
        });
        yield return ("getFormula", new OperationExample { Summary = "One every kitchen starts with", Answer = Read(rub, Id, 1, First, catalogue), Others = AsRecipe(rub, catalogue) });
        yield return ("replaceFormula", new OperationExample
        {
            Summary = "A lighter dose",
            Body = JsonSerializer.SerializeToNode(lighter, json.FormulaRequest),
            Answer = Read(lighter, Id, 2, Second, catalogue),
            Refusal = refusal,
        });
        yield return ("getFormulaRevision", new OperationExample { Summary = "The first revision", Answer = Read(rub, Id, 1, First, catalogue), Others = AsRecipe(rub, catalogue) });
        yield return ("listFormulaRevisions", new OperationExample
        {
            Summary = "Replaced once",
            Answer = JsonSerializer.SerializeToNode(
                new ListResponse<RevisionSummary>([new(1, rub.Name!, rub.Kind!, First), new(2, rub.Name!, rub.Kind!, Second)], null),
                json.ListResponseRevisionSummary),
            Refusal = ReferenceExamples.BadPage("revisions"),
        });
        yield return ("computeFormulaChange", new OperationExample
        {
            Summary = "More pepper, the salt held",
            Body = JsonSerializer.SerializeToNode(ExampleBodies.Change(), json.FormulaChangeRequest),
            Answer = JsonSerializer.SerializeToNode(FormulaChanges.Compute(ExampleBodies.Change(), catalogue, (_, _) => null).Value!, json.FormulaChangeResponse),
            Refusal = Problems.Of(FormulaChanges.Compute(ExampleBodies.UnsoundChange(), catalogue, (_, _) => null).Log),
        });
        yield return ("listChanges", new OperationExample
        {
            Summary = "One replaced, one deleted",
            Answer = JsonSerializer.SerializeToNode(
                new ChangesResponse(
                    [new(7, "formula", Id, 2, "put", Second), new(8, "formula", "lockside-old-card", 1, "deleted", Second)], 8),
                json.ChangesResponse),
            Refusal = BadSince(),
        });
    }

    /// <summary>The formulas every kitchen starts with.</summary>
    public static IReadOnlyDictionary<string, FormulaRequest> Stored() =>
        SeedFolder.ReadFormulas().ToDictionary(f => f.Id, f => StoredFormulas.Parse(f.Document), StringComparer.Ordinal);

    private static JsonNode? Read(FormulaRequest authored, string id, long revision, string at, Catalogue catalogue) =>
        JsonSerializer.SerializeToNode(Answer(authored, id, revision, at, catalogue), RubLabJson.Default.FormulaResponse);

    private static Dictionary<string, JsonNode> AsRecipe(FormulaRequest authored, Catalogue catalogue) => new()
    {
        [Negotiation.JsonLd] = JsonSerializer.SerializeToNode(
            Recipes.From(Answer(authored, Id, 1, First, catalogue), catalogue), RecipeJson.Default.RecipeResponse)!,
    };

    private static FormulaResponse Answer(FormulaRequest authored, string id, long revision, string at, Catalogue catalogue) =>
        FormulaAnswers.From(FormulaAnswers.Check(authored, catalogue).Value!, authored, id, revision, at, catalogue);

    private static IResult BadSince()
    {
        var log = new FaultLog();
        ChangesEndpoints.ReadSince("yesterday", log);
        return Problems.Of(log);
    }
}
