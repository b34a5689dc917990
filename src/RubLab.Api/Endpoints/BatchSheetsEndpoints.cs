using RubLab.Api.Http;
using RubLab.Contracts.Json;
using RubLab.Contracts.Scaling;
using RubLab.Storage;

namespace RubLab.Api.Endpoints;

internal static class BatchSheetsEndpoints
{
    private const int ShortPieceCount = 1000;

    public static void MapBatchSheets(this RouteGroupBuilder api) => api.MapPost("/batch-sheets", Post)
        .WithTags("Bench")
        .Described(
            "computeBatchSheet", "Scales formulas to a pile of cuts: what to weigh, how much on each piece, and the salt it comes to.",
            "Amounts are whole weighing steps: pieces sum to onMeat and lines to toMix exactly. At most 20 treatments, 100 pile lines, 300,000 piece-treatments.")
        .Produces<BatchSheetResponse>()
        .Refuses()
        .TakesBody();

    private static async Task<IResult> Post(HttpContext http, KitchenCatalogue kitchen, Database database, BatchSheetRequest request)
    {
        var lookup = await StoredFormulas.FetchAsync(request.Treatments, Caller.Of(http), database, http.RequestAborted);
        var result = BatchSheets.Compute(request, kitchen.Catalogue, lookup);
        if (!result.IsGood)
        {
            return Problems.Of(result.Log);
        }

        return result.Value.PieceCount <= ShortPieceCount
            ? Answers.ComputedShort(http, result.Value, RubLabJson.Default.BatchSheetResponse)
            : Answers.Computed(http, result.Value, RubLabJson.Default.BatchSheetResponse);
    }
}
