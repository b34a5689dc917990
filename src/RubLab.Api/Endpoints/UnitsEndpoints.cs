using RubLab.Api.Http;
using RubLab.Contracts.Json;
using RubLab.Contracts.Listing;
using RubLab.Contracts.Reference;
using RubLab.Core.Catalogues;

namespace RubLab.Api.Endpoints;

internal static class UnitsEndpoints
{
    public static void MapUnits(this RouteGroupBuilder api) => api.MapGet("/units", List)
        .WithTags("Reference")
        .Described("listUnits", "Every unit symbol with its exact factor.", "The whole table; it is short and not paged.")
        .Produces<ListResponse<UnitResponse>>()
        .Produces(StatusCodes.Status304NotModified)
        .Refuses();

    private static IResult List(HttpContext http, Catalogue catalogue) => Answers.Tagged(
        http, EntityTags.OfEdition(catalogue.Version),
        new ListResponse<UnitResponse>(ReferenceAnswers.Units(), null), RubLabJson.Default.ListResponseUnitResponse);
}
