using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using RubLab.Api.Callers;
using RubLab.Api.Hosting;
using RubLab.Api.Http;
using RubLab.Contracts.Listing;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Storage;
using RubLab.Storage.Kitchens;
using RubLab.Storage.OwnNumbers;

namespace RubLab.Api.Endpoints;

/// <summary>What the routes of every kind of number that a kitchen measures itself have in common.</summary>
/// <param name="Name">The path's noun.</param>
/// <param name="Store">Where they are kept.</param>
/// <param name="TagLetter">Begins the tag of a list.</param>
/// <param name="RevisionOf">How often the kitchen has changed them.</param>
/// <param name="Answer">One as it is read back; none where the reference data does not know its ids.</param>
/// <param name="Precondition">Refuses a write over what its sender has not seen.</param>
/// <param name="RequestType">How what is put is kept.</param>
/// <param name="AnswerType">How one is written.</param>
/// <param name="ListType">How a list is written.</param>
internal sealed record OwnNumberRoutes<TKey, TRequest, TAnswer>(
    string Name, Func<UnitOfWork, OwnNumberStore<TKey>> Store, char TagLetter, Func<Kitchen, long> RevisionOf,
    Func<StoredOwnNumber<TKey>, TRequest, Catalogue, TAnswer?> Answer, Precondition Precondition,
    JsonTypeInfo<TRequest> RequestType, JsonTypeInfo<TAnswer> AnswerType, JsonTypeInfo<ListResponse<TAnswer>> ListType)
    where TKey : class, IOwnNumberKey<TKey>
    where TAnswer : class
{
    public async Task<IResult> List(HttpContext http, Catalogue catalogue, Database database, Cursors cursors, [AsParameters] ListQuery query)
    {
        var log = new FaultLog();
        var (limit, position) = query.Read(cursors, Name, log);
        if (!log.IsClean)
        {
            return Problems.Of(log);
        }

        await using var work = await database.BeginAsync(Intent.Read, http.RequestAborted);
        var kitchenId = Caller.Of(http).KitchenId;
        var after = position is null ? null : TKey.Of(position[0], position.ElementAtOrDefault(1));
        var rows = await Store(work).ListAsync(kitchenId, limit + 1, after, http.RequestAborted);
        var kitchen = await work.Kitchens.GetAsync(kitchenId, http.RequestAborted);
        var page = rows.Take(limit).Select(stored => Read(stored, catalogue)).OfType<TAnswer>().ToList();
        var next = rows.Count > limit ? cursors.Write(Name, rows[limit - 1].Key.Parts) : null;
        var tag = string.Create(CultureInfo.InvariantCulture, $"\"{TagLetter}{(kitchen is null ? 0 : RevisionOf(kitchen))}-{catalogue.Version}\"");
        return Answers.Tagged(http, tag, new ListResponse<TAnswer>(page, next), ListType);
    }

    public async Task<IResult> GetAsync(HttpContext http, Catalogue catalogue, Database database, TKey key)
    {
        await using var work = await database.BeginAsync(Intent.Read, http.RequestAborted);
        return await Store(work).GetAsync(Caller.Of(http).KitchenId, key, http.RequestAborted) is { } stored
            && Read(stored, catalogue) is { } answer
            ? Answers.Tagged(http, EntityTags.OfRevision(stored.Revision, catalogue.Version), answer, AnswerType)
            : Problems.Of(ProblemTypes.NotFound);
    }

    /// <summary>Keeps a request that has been found good, for ids that the reference data knows.</summary>
    public async Task<IResult> PutAsync(
        HttpContext http, Catalogue catalogue, Database database, KitchenCatalogues kitchens, TKey key, TRequest request)
    {
        var kitchenId = Caller.Of(http).KitchenId;
        await using var work = await database.BeginAsync(Intent.Write, http.RequestAborted);
        var current = await Store(work).GetAsync(kitchenId, key, http.RequestAborted);
        var (expected, refusal) = Precondition.OfPut(http.Request, current?.Revision);
        if (refusal is not null)
        {
            return refusal;
        }

        var write = await Store(work).PutAsync(kitchenId, key, expected, JsonSerializer.Serialize(request, RequestType), http.RequestAborted);
        if (!write.IsWritten)
        {
            return Precondition.NotWritten(write.Outcome, write.CurrentRevision);
        }

        await work.CommitAsync(http.RequestAborted);
        kitchens.Forget(kitchenId);
        http.Response.Headers.ETag = EntityTags.OfRevision(write.Stored.Revision, catalogue.Version);
        if (current is null)
        {
            http.Response.Headers.Location = $"/v1/{Name}/{key.Id}";
        }

        return TypedResults.Json(
            Read(write.Stored, catalogue)!, AnswerType, statusCode: current is null ? StatusCodes.Status201Created : StatusCodes.Status200OK);
    }

    public async Task<IResult> DeleteAsync(HttpContext http, Database database, KitchenCatalogues kitchens, TKey key)
    {
        var kitchenId = Caller.Of(http).KitchenId;
        await using var work = await database.BeginAsync(Intent.Write, http.RequestAborted);
        if (await Store(work).GetAsync(kitchenId, key, http.RequestAborted) is not { } current)
        {
            return Problems.Of(ProblemTypes.NotFound);
        }

        var (expected, refusal) = Precondition.Over(http.Request, current.Revision);
        if (refusal is not null)
        {
            return refusal;
        }

        var write = await Store(work).DeleteAsync(kitchenId, key, expected, http.RequestAborted);
        if (!write.IsWritten)
        {
            return Precondition.NotWritten(write.Outcome, write.CurrentRevision);
        }

        await work.CommitAsync(http.RequestAborted);
        kitchens.Forget(kitchenId);
        return TypedResults.NoContent();
    }

    // Ids are never removed from the reference data, so what was stored is found again.
    private TAnswer? Read(StoredOwnNumber<TKey> stored, Catalogue catalogue) =>
        Answer(stored, JsonSerializer.Deserialize(stored.Document, RequestType)!, catalogue);
}
