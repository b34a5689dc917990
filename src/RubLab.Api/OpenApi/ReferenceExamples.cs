using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using RubLab.Api.Http;
using RubLab.Contracts.Ingredients;
using RubLab.Contracts.Json;
using RubLab.Contracts.Listing;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reference;
using RubLab.Contracts.Service;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;

namespace RubLab.Api.OpenApi;

/// <summary>Examples of reading and measuring.</summary>
internal static class ReferenceExamples
{
    private const int Shown = 2;

    /// <summary>Signs the cursors shown; a server signs with a key of its own.</summary>
    public static Cursors Cursors { get; } = new(new byte[32]);

    public static IEnumerable<(string OperationId, OperationExample Example)> All(Catalogue catalogue)
    {
        var json = RubLabJson.Default;
        var units = ReferenceAnswers.Units();
        yield return Read(
            "listUnits", $"The first {Shown} of {units.Count}",
            new ListResponse<UnitResponse>(units.Take(Shown).ToList(), null), json.ListResponseUnitResponse);
        yield return Page("sources", catalogue.Sources, s => s.Id, ReferenceAnswers.From, json.ListResponseSourceResponse);
        yield return Page("ingredients", catalogue.Ingredients, i => i.Id, ReferenceAnswers.Summary, json.ListResponseIngredientSummary);
        yield return Page("cuts", catalogue.Cuts, c => c.Id, ReferenceAnswers.Summary, json.ListResponseCutSummary);
        yield return Read("getSource", "A source", ReferenceAnswers.From(catalogue.Sources.First(s => s.Id == "usda-sr28")), json.SourceResponse);
        yield return Read("getIngredient", "Black pepper", ReferenceAnswers.From(Found(catalogue.TryFindIngredient("black-pepper", out var pepper), pepper), catalogue), json.IngredientResponse);
        yield return Read("getCut", "Pork shoulder", ReferenceAnswers.From(Found(catalogue.TryFindCut("pork-shoulder", out var cut), cut), catalogue), json.CutResponse);
        yield return Read("getHealth", "Well", new HealthResponse("ok", catalogue.Version), json.HealthResponse);
        yield return ("convert", Convert(catalogue));
        yield return ("convertMany", ConvertMany(catalogue));
    }

    /// <summary>What a list says to a limit and a cursor that are none.</summary>
    public static IResult BadPage(string list)
    {
        var log = new FaultLog();
        new ListQuery { Limit = "0", Cursor = "two" }.Read(Cursors, list, log);
        return Problems.Of(log);
    }

    private static OperationExample Convert(Catalogue catalogue)
    {
        var pepper = new ConversionItemRequest { Ingredient = "black-pepper", Form = "ground", Amount = QuantityRequest.Of(2, "tbsp"), To = "g" };
        var unknown = new ConversionItemRequest { Ingredient = "black-peper", Amount = QuantityRequest.Of(2, "tablespoon"), To = "g" };
        return new OperationExample
        {
            Summary = "Two tablespoons of ground pepper",
            Answer = JsonSerializer.SerializeToNode(Conversions.Compute(pepper, catalogue, isQuery: true).Value!, RubLabJson.Default.ConversionResponse),
            Refusal = Problems.Of(Conversions.Compute(unknown, catalogue, isQuery: true).Log),
        };
    }

    private static OperationExample ConvertMany(Catalogue catalogue)
    {
        var card = ExampleBodies.Card();
        return new OperationExample
        {
            Summary = "Two lines of an old card, one of them in a form nobody knows",
            Body = JsonSerializer.SerializeToNode(card, RubLabJson.Default.ConversionsRequest),
            Answer = JsonSerializer.SerializeToNode(Conversions.Compute(card, catalogue).Value!, RubLabJson.Default.ConversionsResponse),
            Refusal = Problems.Of(Conversions.Compute(new ConversionsRequest { Items = [] }, catalogue).Log),
        };
    }

    private static (string OperationId, OperationExample Example) Page<TIn, TOut>(
        string list, IReadOnlyList<TIn> all, Func<TIn, string> id, Func<TIn, TOut> write, JsonTypeInfo<ListResponse<TOut>> type)
    {
        var page = ListQuery.Page(all, list, Shown, null, id, write, Cursors);
        return ("list" + char.ToUpperInvariant(list[0]) + list[1..], new OperationExample
        {
            Summary = $"With limit={Shown}",
            Answer = JsonSerializer.SerializeToNode(page, type),
            Refusal = BadPage(list),
        });
    }

    private static (string OperationId, OperationExample Example) Read<T>(string operationId, string summary, T answer, JsonTypeInfo<T> type) =>
        (operationId, new OperationExample { Summary = summary, Answer = JsonSerializer.SerializeToNode(answer, type) });

    private static T Found<T>(bool isFound, T? item)
        where T : class => isFound ? item! : throw new InvalidDataException($"The reference data lacks the {typeof(T).Name} of an example.");
}
