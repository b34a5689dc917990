using RubLab.Api.Http;
using RubLab.Contracts.Json;
using RubLab.Contracts.Listing;
using RubLab.Contracts.Reference;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;

namespace RubLab.Api.Endpoints;

internal static class IngredientsEndpoints
{
    private const string ListName = "ingredients";

    public static void MapIngredients(this RouteGroupBuilder api)
    {
        var routes = api.MapGroup("/ingredients").WithTags("Reference");
        routes.MapGet("/", List)
            .Described("listIngredients", "The ingredients, by group and name as in the reference data.")
            .Produces<ListResponse<IngredientSummary>>()
            .Produces(StatusCodes.Status304NotModified)
            .Refuses(ProblemTypes.Unprocessable);
        routes.MapGet("/{id}", Get)
            .Described("getIngredient", "One ingredient: composition, forms with their density bands, household measures.")
            .Produces<IngredientResponse>()
            .Produces(StatusCodes.Status304NotModified)
            .Refuses(ProblemTypes.NotFound);
    }

    private static IResult List(HttpContext http, Catalogue catalogue, Cursors cursors, [AsParameters] ListQuery query)
    {
        var log = new FaultLog();
        var (limit, position) = query.Read(cursors, ListName, log);
        return log.IsClean
            ? Answers.Tagged(
                http, EntityTags.OfEdition(catalogue.Version),
                ListQuery.Page(catalogue.Ingredients, ListName, limit, position, i => i.Id, ReferenceAnswers.Summary, cursors),
                RubLabJson.Default.ListResponseIngredientSummary)
            : Problems.Of(log);
    }

    private static IResult Get(HttpContext http, Catalogue catalogue, string id) =>
        catalogue.TryFindIngredient(id, out var ingredient)
            ? Answers.Tagged(http, EntityTags.OfEdition(catalogue.Version), ReferenceAnswers.From(ingredient), RubLabJson.Default.IngredientResponse)
            : Problems.Of(ProblemTypes.NotFound);
}
