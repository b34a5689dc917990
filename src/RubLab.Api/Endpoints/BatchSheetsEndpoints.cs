using Microsoft.AspNetCore.Mvc;
using RubLab.Api.Callers;
using RubLab.Api.Formulas;
using RubLab.Api.Http;
using RubLab.Contracts.Outputs;
using RubLab.Contracts.Scaling;
using RubLab.Storage;

namespace RubLab.Api.Endpoints;

internal static class BatchSheetsEndpoints
{
    public static void MapBatchSheets(this RouteGroupBuilder api) => api.MapPost("/batch-sheets", Post)
        .WithTags("Bench")
        .Described(
            "computeBatchSheet", "Scales formulas to a pile of cuts: what to weigh, how much on each piece, and the salt it comes to.",
            "Amounts are whole weighing steps: pieces sum to onMeat and lines to toMix exactly. At most 20 treatments, 100 pile lines, 300,000 piece-treatments. "
            + "JSON, or a page to print where Accept likes text/html best; with table, that table alone as text/csv.")
        .Produces<BatchSheetResponse>(StatusCodes.Status200OK, Negotiation.Json, Negotiation.Html, Negotiation.Csv)
        .Refuses()
        .TakesBody();

    private static async Task<IResult> Post(
        HttpContext http, KitchenCatalogue kitchen, Database database, BatchSheetRequest request, [FromQuery(Name = "table")] string? table)
    {
        var type = table is null ? Negotiation.Best(http.Request, Negotiation.Json, Negotiation.Html) : Negotiation.Best(http.Request, Negotiation.Csv);
        if (type is null)
        {
            return Problems.Of(
                ProblemTypes.NotAcceptable,
                table is null ? "Without table this is application/json or text/html; for text/csv say which table." : "A table is text/csv and nothing else.");
        }

        var lookup = await StoredFormulas.FetchAsync(request.Treatments, Caller.Of(http), database, http.RequestAborted);
        var result = BatchSheets.Compute(request, kitchen.Catalogue, lookup);
        var asked = SheetTables.Read(table, request, result.Log.Root.At("table"));
        if (!result.IsGood || !result.Log.IsClean)
        {
            return Problems.Of(result.Log);
        }

        return asked is { } one ? SheetAnswers.Table(http, result.Value, one)
            : type == Negotiation.Html ? SheetAnswers.Printed(http, result.Value, kitchen.Catalogue)
            : SheetAnswers.Json(http, result.Value);
    }
}
