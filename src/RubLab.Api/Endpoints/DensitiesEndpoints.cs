using RubLab.Api.Callers;
using RubLab.Api.Formulas;
using RubLab.Api.Hosting;
using RubLab.Api.Http;
using RubLab.Contracts.Ingredients;
using RubLab.Contracts.Json;
using RubLab.Contracts.Listing;
using RubLab.Core.Catalogues;
using RubLab.Storage;
using RubLab.Storage.OwnNumbers;

namespace RubLab.Api.Endpoints;

internal static class DensitiesEndpoints
{
    private static readonly OwnNumberRoutes<FormKey, OwnDensityRequest, OwnDensityResponse> Own = new(
        "densities", work => work.Densities, 'd', kitchen => kitchen.DensityRevision, Answer, new Precondition("this density", "The density is"),
        RubLabJson.Default.OwnDensityRequest, RubLabJson.Default.OwnDensityResponse, RubLabJson.Default.ListResponseOwnDensityResponse);

    public static void MapDensities(this RouteGroupBuilder api)
    {
        var routes = api.MapGroup("/densities").WithTags("Measuring");
        routes.MapGet("/", Own.List)
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

    private static Task<IResult> Get(HttpContext http, Catalogue catalogue, Database database, string ingredient, string form) =>
        Own.GetAsync(http, catalogue, database, new FormKey(ingredient, form));

    private static async Task<IResult> Put(
        HttpContext http, Catalogue catalogue, Database database, KitchenCatalogues kitchens, string ingredient, string form, OwnDensityRequest request)
    {
        if (!catalogue.TryFindIngredient(ingredient, out var known) || !known.TryFindForm(form, out _))
        {
            return Problems.Of(ProblemTypes.NotFound);
        }

        var check = OwnDensities.Check(request, catalogue);
        return check.IsGood
            ? await Own.PutAsync(http, catalogue, database, kitchens, new FormKey(ingredient, form), request)
            : Problems.Of(check.Log);
    }

    private static Task<IResult> Delete(HttpContext http, Database database, KitchenCatalogues kitchens, string ingredient, string form) =>
        Own.DeleteAsync(http, database, kitchens, new FormKey(ingredient, form));

    private static OwnDensityResponse? Answer(StoredOwnNumber<FormKey> stored, OwnDensityRequest request, Catalogue catalogue) =>
        catalogue.TryFindIngredient(stored.Key.IngredientId, out var ingredient)
        && ingredient.TryFindForm(stored.Key.FormId, out var form)
        && OwnDensities.Check(request, catalogue).Value is { } density
            ? OwnDensities.From(density, request, ingredient, form, stored.Revision, FormulaDocuments.Time(stored.UpdatedAt))
            : null;
}
