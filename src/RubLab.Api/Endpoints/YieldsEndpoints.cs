using RubLab.Api.Callers;
using RubLab.Api.Formulas;
using RubLab.Api.Hosting;
using RubLab.Api.Http;
using RubLab.Contracts.Json;
using RubLab.Contracts.Listing;
using RubLab.Contracts.Yields;
using RubLab.Core.Catalogues;
using RubLab.Storage;
using RubLab.Storage.OwnNumbers;

namespace RubLab.Api.Endpoints;

internal static class YieldsEndpoints
{
    private static readonly OwnNumberRoutes<CutKey, OwnYieldRequest, OwnYieldResponse> Own = new(
        "yields", work => work.Yields, 'y', kitchen => kitchen.YieldRevision, Answer, new Precondition("these yields", "The yields are"),
        RubLabJson.Default.OwnYieldRequest, RubLabJson.Default.OwnYieldResponse, RubLabJson.Default.ListResponseOwnYieldResponse);

    public static void MapYields(this RouteGroupBuilder api)
    {
        var routes = api.MapGroup("/yields").WithTags("Serving");
        routes.MapGet("/", Own.List)
            .Described("listYields", "The cooking yields the kitchen has recorded itself.")
            .Produces<ListResponse<OwnYieldResponse>>()
            .Produces(StatusCodes.Status304NotModified)
            .Refuses(ProblemTypes.Unprocessable);
        routes.MapGet("/{cut}", Get)
            .Described("getYield", "The kitchen's own cooking yields of one cut.")
            .Produces<OwnYieldResponse>()
            .Produces(StatusCodes.Status304NotModified)
            .Refuses(ProblemTypes.NotFound);
        routes.MapPut("/{cut}", Put)
            .Described(
                "putYield", "Records cooks of a cut: 1 to 200, each weighed before and after.",
                "Takes the place of the reference's yield everywhere in the kitchen; below five records it is drawn towards it. All records are sent each time. A new cut needs no If-Match; one that is there does.")
            .WithMetadata(new WritesMetadata())
            .Produces<OwnYieldResponse>()
            .Produces<OwnYieldResponse>(StatusCodes.Status201Created)
            .Refuses(ProblemTypes.NotFound, ProblemTypes.Stale, ProblemTypes.PreconditionNeeded)
            .TakesBody();
        routes.MapDelete("/{cut}", Delete)
            .Described("deleteYield", "Goes back to the reference's yield.", "If-Match must carry the ETag that was read.")
            .WithMetadata(new WritesMetadata())
            .Produces(StatusCodes.Status204NoContent)
            .Refuses(ProblemTypes.NotFound, ProblemTypes.Stale, ProblemTypes.PreconditionNeeded);
    }

    private static Task<IResult> Get(HttpContext http, Catalogue catalogue, Database database, string cut) =>
        Own.GetAsync(http, catalogue, database, new CutKey(cut));

    private static async Task<IResult> Put(
        HttpContext http, Catalogue catalogue, Database database, KitchenCatalogues kitchens, string cut, OwnYieldRequest request)
    {
        if (!catalogue.TryFindCut(cut, out var known))
        {
            return Problems.Of(ProblemTypes.NotFound);
        }

        var check = OwnYieldRecords.Check(request, known, catalogue);
        return check.IsGood
            ? await Own.PutAsync(http, catalogue, database, kitchens, new CutKey(cut), request)
            : Problems.Of(check.Log);
    }

    private static Task<IResult> Delete(HttpContext http, Database database, KitchenCatalogues kitchens, string cut) =>
        Own.DeleteAsync(http, database, kitchens, new CutKey(cut));

    private static OwnYieldResponse? Answer(StoredOwnNumber<CutKey> stored, OwnYieldRequest request, Catalogue catalogue) =>
        catalogue.TryFindCut(stored.Key.CutId, out var cut) && OwnYieldRecords.Check(request, cut, catalogue).Value is { } yields
            ? OwnYieldRecords.From(yields, request, cut.Id, stored.Revision, FormulaDocuments.Time(stored.UpdatedAt))
            : null;
}
