using System.Globalization;
using System.Text.Json;
using RubLab.Api.Hosting;
using RubLab.Api.Http;
using RubLab.Contracts.Ingredients;
using RubLab.Contracts.Json;
using RubLab.Contracts.Listing;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Storage;
using RubLab.Storage.Densities;

namespace RubLab.Api.Endpoints;

internal static class DensitiesEndpoints
{
    private const string ListName = "densities";

    public static void MapDensities(this RouteGroupBuilder api)
    {
        var routes = api.MapGroup("/densities").WithTags("Measuring");
        routes.MapGet("/", List)
            .Described("listDensities", "The densities the kitchen has weighed itself.")
            .Produces<ListResponse<OwnDensityResponse>>()
            .Produces(StatusCodes.Status304NotModified)
            .Refuses(ProblemTypes.Unprocessable);
        routes.MapGet("/{ingredient}/{form}", Get)
            .Described("getDensity", "The kitchen's own density of one form.")
            .Produces<OwnDensityResponse>()
            .Produces(StatusCodes.Status304NotModified)
            .Refuses(ProblemTypes.NotFound);
        routes.MapPut("/{ingredient}/{form}", Put)
            .Described(
                "putDensity", "Weighs a form: 1 to 50 level fillings of a measure.",
                "Takes the place of the reference's density everywhere in the kitchen. A new one needs no If-Match; one that is there does.")
            .WithMetadata(new WritesMetadata())
            .Produces<OwnDensityResponse>()
            .Produces<OwnDensityResponse>(StatusCodes.Status201Created)
            .Refuses(ProblemTypes.NotFound, ProblemTypes.Stale, ProblemTypes.PreconditionNeeded)
            .TakesBody();
        routes.MapDelete("/{ingredient}/{form}", Delete)
            .Described("deleteDensity", "Goes back to the reference's density.", "If-Match must carry the ETag that was read.")
            .WithMetadata(new WritesMetadata())
            .Produces(StatusCodes.Status204NoContent)
            .Refuses(ProblemTypes.NotFound, ProblemTypes.Stale, ProblemTypes.PreconditionNeeded);
    }

    private static async Task<IResult> List(HttpContext http, Catalogue catalogue, Database database, Cursors cursors, [AsParameters] ListQuery query)
    {
        var log = new FaultLog();
        var (limit, position) = query.Read(cursors, ListName, log);
        if (!log.IsClean)
        {
            return Problems.Of(log);
        }

        await using var work = await database.BeginAsync(Intent.Read, http.RequestAborted);
        var kitchenId = Caller.Of(http).KitchenId;
        var after = position is [var ingredient, var form] ? new DensityPosition(ingredient, form) : null;
        var rows = await work.Densities.ListAsync(kitchenId, limit + 1, after, http.RequestAborted);
        var kitchen = await work.Kitchens.GetAsync(kitchenId, http.RequestAborted);
        var next = rows.Count > limit ? cursors.Write(ListName, rows[limit - 1].IngredientId, rows[limit - 1].FormId) : null;
        var tag = string.Create(CultureInfo.InvariantCulture, $"\"d{kitchen?.DensityRevision ?? 0}-{catalogue.Version}\"");
        return Answers.Tagged(
            http, tag, new ListResponse<OwnDensityResponse>(rows.Take(limit).Select(r => Answer(r, catalogue)).OfType<OwnDensityResponse>().ToList(), next),
            RubLabJson.Default.ListResponseOwnDensityResponse);
    }

    private static async Task<IResult> Get(HttpContext http, Catalogue catalogue, Database database, string ingredient, string form)
    {
        await using var work = await database.BeginAsync(Intent.Read, http.RequestAborted);
        return await work.Densities.GetAsync(Caller.Of(http).KitchenId, ingredient, form, http.RequestAborted) is { } stored
            && Answer(stored, catalogue) is { } answer
            ? Answers.Tagged(http, EntityTags.OfRevision(stored.Revision, catalogue.Version), answer, RubLabJson.Default.OwnDensityResponse)
            : Problems.Of(ProblemTypes.NotFound);
    }

    private static async Task<IResult> Put(
        HttpContext http, Catalogue catalogue, Database database, KitchenCatalogues kitchens, string ingredient, string form, OwnDensityRequest request)
    {
        if (!catalogue.TryFindIngredient(ingredient, out var known) || !known.TryFindForm(form, out _))
        {
            return Problems.Of(ProblemTypes.NotFound);
        }

        var check = OwnDensities.Check(request, catalogue);
        if (!check.IsGood)
        {
            return Problems.Of(check.Log);
        }

        var kitchenId = Caller.Of(http).KitchenId;
        await using var work = await database.BeginAsync(Intent.Write, http.RequestAborted);
        var current = await work.Densities.GetAsync(kitchenId, ingredient, form, http.RequestAborted);
        var (kind, revision) = EntityTags.RevisionOf(http.Request);
        if (current is not null && kind == IfMatch.Absent)
        {
            return Problems.Of(ProblemTypes.PreconditionNeeded);
        }

        if (kind == IfMatch.Unknown || (current is null && kind != IfMatch.Absent))
        {
            return Problems.Of(ProblemTypes.Stale, "If-Match is not one ETag of this density.");
        }

        var expected = kind switch { IfMatch.Absent => (long?)null, IfMatch.Any => current!.Revision, _ => revision };
        var document = JsonSerializer.Serialize(request, RubLabJson.Default.OwnDensityRequest);
        var write = await work.Densities.PutAsync(kitchenId, ingredient, form, expected, document, http.RequestAborted);
        if (!write.IsWritten)
        {
            return NotWritten(write);
        }

        await work.CommitAsync(http.RequestAborted);
        kitchens.Forget(kitchenId);
        http.Response.Headers.ETag = EntityTags.OfRevision(write.Density.Revision, catalogue.Version);
        if (current is null)
        {
            http.Response.Headers.Location = $"/v1/densities/{ingredient}/{form}";
        }

        return TypedResults.Json(
            Answer(write.Density, catalogue)!, RubLabJson.Default.OwnDensityResponse,
            statusCode: current is null ? StatusCodes.Status201Created : StatusCodes.Status200OK);
    }

    private static async Task<IResult> Delete(HttpContext http, Database database, KitchenCatalogues kitchens, string ingredient, string form)
    {
        var kitchenId = Caller.Of(http).KitchenId;
        await using var work = await database.BeginAsync(Intent.Write, http.RequestAborted);
        if (await work.Densities.GetAsync(kitchenId, ingredient, form, http.RequestAborted) is not { } current)
        {
            return Problems.Of(ProblemTypes.NotFound);
        }

        var (kind, revision) = EntityTags.RevisionOf(http.Request);
        if (kind is IfMatch.Absent or IfMatch.Unknown)
        {
            return kind == IfMatch.Absent
                ? Problems.Of(ProblemTypes.PreconditionNeeded)
                : Problems.Of(ProblemTypes.Stale, "If-Match is not one ETag of this density.");
        }

        var write = await work.Densities.DeleteAsync(
            kitchenId, ingredient, form, kind == IfMatch.Any ? current.Revision : revision, http.RequestAborted);
        if (!write.IsWritten)
        {
            return NotWritten(write);
        }

        await work.CommitAsync(http.RequestAborted);
        kitchens.Forget(kitchenId);
        return TypedResults.NoContent();
    }

    private static IResult NotWritten(DensityWrite write) => write.Outcome == WriteOutcome.Missing
        ? Problems.Of(ProblemTypes.NotFound)
        : Problems.Of(ProblemTypes.Stale, $"The density is at revision {write.CurrentRevision} by now.");

    // Ids are never removed from the reference data, so what was stored is found again.
    private static OwnDensityResponse? Answer(StoredDensity stored, Catalogue catalogue)
    {
        var request = JsonSerializer.Deserialize(stored.Document, RubLabJson.Default.OwnDensityRequest)!;
        return catalogue.TryFindIngredient(stored.IngredientId, out var ingredient)
            && ingredient.TryFindForm(stored.FormId, out var form)
            && OwnDensities.Check(request, catalogue).Value is { } density
            ? OwnDensities.From(density, request, ingredient, form, stored.Revision, FormulaDocuments.Time(stored.UpdatedAt))
            : null;
    }
}
