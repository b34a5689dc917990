using RubLab.Api.Http;
using RubLab.Contracts.Json;
using RubLab.Contracts.Listing;
using RubLab.Contracts.Reference;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;

namespace RubLab.Api.Endpoints;

internal static class SourcesEndpoints
{
    private const string ListName = "sources";

    public static void MapSources(this RouteGroupBuilder api)
    {
        var routes = api.MapGroup("/sources").WithTags("Reference");
        routes.MapGet("/", List)
            .Described("listSources", "The sources that stand beside the numbers.")
            .Produces<ListResponse<SourceResponse>>()
            .Produces(StatusCodes.Status304NotModified)
            .Refuses(ProblemTypes.Unprocessable);
        routes.MapGet("/{id}", Get)
            .Described("getSource", "One source.")
            .Produces<SourceResponse>()
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
                ListQuery.Page(catalogue.Sources, ListName, limit, position, i => i.Id, ReferenceAnswers.From, cursors),
                RubLabJson.Default.ListResponseSourceResponse)
            : Problems.Of(log);
    }

    private static IResult Get(HttpContext http, Catalogue catalogue, string id) =>
        catalogue.Sources.FirstOrDefault(s => s.Id == id) is { } source
            ? Answers.Tagged(http, EntityTags.OfEdition(catalogue.Version), ReferenceAnswers.From(source), RubLabJson.Default.SourceResponse)
            : Problems.Of(ProblemTypes.NotFound);
}
