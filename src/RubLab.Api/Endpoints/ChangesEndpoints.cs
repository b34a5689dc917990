using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using RubLab.Api.Callers;
using RubLab.Api.Formulas;
using RubLab.Api.Http;
using RubLab.Contracts.Json;
using RubLab.Contracts.Listing;
using RubLab.Core.Faults;
using RubLab.Storage;
using RubLab.Storage.Changes;

namespace RubLab.Api.Endpoints;

internal static class ChangesEndpoints
{
    public const int PageSize = 200;

    public static void MapChanges(this RouteGroupBuilder api) => api.MapGet("/changes", List)
        .WithTags("Formulas")
        .Described("listChanges", "What changed in the kitchen since a number, in order, deletions included.", "At most 200 a page; ask again from last until items is empty.")
        .Produces<ChangesResponse>()
        .Refuses(ProblemTypes.Unprocessable);

    /// <summary>The number to start after; a fault goes into the log.</summary>
    public static long ReadSince(string? since, FaultLog log)
    {
        long after = 0;
        if (since is not null && !long.TryParse(since, NumberStyles.None, CultureInfo.InvariantCulture, out after))
        {
            log.Root.At("since").Fault("out-of-range", "since is the number of a change, 0 for all.");
        }

        return after;
    }

    private static async Task<IResult> List(HttpContext http, Database database, [FromQuery] string? since)
    {
        var log = new FaultLog();
        var after = ReadSince(since, log);
        if (!log.IsClean)
        {
            return Problems.Of(log);
        }

        await using var work = await database.BeginAsync(Intent.Read, http.RequestAborted);
        var changes = await work.Changes.ListAsync(Caller.Of(http).KitchenId, after, PageSize, http.RequestAborted);
        var items = changes.Select(c => new ChangeResponse(
            c.Number, c.Noun, c.ItemId, c.Revision, c.Action == ChangeAction.Deleted ? "deleted" : "put", FormulaDocuments.Time(c.At))).ToList();
        return Answers.Computed(http, new ChangesResponse(items, items.Count > 0 ? items[^1].Number : after), RubLabJson.Default.ChangesResponse);
    }
}
