using RubLab.Api.Http;
using RubLab.Contracts.Json;
using RubLab.Contracts.Listing;
using RubLab.Contracts.Reference;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;

namespace RubLab.Api.Endpoints;

internal static class CutsEndpoints
{
    private const string ListName = "cuts";

    public static void MapCuts(this RouteGroupBuilder api)
    {
        var routes = api.MapGroup("/cuts").WithTags("Reference");
        routes.MapGet("/", List)
            .Described("listCuts", "The cuts of meat.")
            .Produces<ListResponse<CutSummary>>()
            .Produces(StatusCodes.Status304NotModified)
            .Refuses(ProblemTypes.Unprocessable);
        routes.MapGet("/{id}", Get)
            .Described("getCut", "One cut: natural sodium, trim, cook yields and salt kept in cooking, each with its source.")
            .Produces<CutResponse>()
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
                ListQuery.Page(catalogue.Cuts, ListName, limit, position, i => i.Id, ReferenceAnswers.Summary, cursors),
                RubLabJson.Default.ListResponseCutSummary)
            : Problems.Of(log);
    }

    private static IResult Get(HttpContext http, Catalogue catalogue, string id) =>
        catalogue.TryFindCut(id, out var cut)
            ? Answers.Tagged(http, EntityTags.OfEdition(catalogue.Version), ReferenceAnswers.From(cut, catalogue), RubLabJson.Default.CutResponse)
            : Problems.Of(ProblemTypes.NotFound);
}
