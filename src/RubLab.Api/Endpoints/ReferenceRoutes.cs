using System.Text.Json.Serialization.Metadata;
using RubLab.Api.Http;
using RubLab.Contracts.Listing;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;

namespace RubLab.Api.Endpoints;

/// <summary>A kind of reference data as two routes: a list, and one of it by id.</summary>
/// <param name="Name">The path's noun.</param>
/// <param name="All">All of it, in the order a list shows.</param>
/// <param name="IdOf">Its id.</param>
/// <param name="Summary">One item in the list.</param>
/// <param name="Whole">One item by itself.</param>
/// <param name="ListType">How a list is written.</param>
/// <param name="WholeType">How one item is written.</param>
internal sealed record ReferenceRoutes<T, TSummary, TWhole>(
    string Name, Func<Catalogue, IReadOnlyList<T>> All, Func<T, string> IdOf, Func<T, TSummary> Summary, Func<T, Catalogue, TWhole> Whole,
    JsonTypeInfo<ListResponse<TSummary>> ListType, JsonTypeInfo<TWhole> WholeType)
{
    public void Map(RouteGroupBuilder api, (string Id, string Summary) list, (string Id, string Summary) one)
    {
        var routes = api.MapGroup("/" + Name).WithTags("Reference");
        routes.MapGet("/", List)
            .Described(list.Id, list.Summary)
            .Produces<ListResponse<TSummary>>()
            .Produces(StatusCodes.Status304NotModified)
            .Refuses(ProblemTypes.Unprocessable);
        routes.MapGet("/{id}", Get)
            .Described(one.Id, one.Summary)
            .Produces<TWhole>()
            .Produces(StatusCodes.Status304NotModified)
            .Refuses(ProblemTypes.NotFound);
    }

    private IResult List(HttpContext http, Catalogue catalogue, Cursors cursors, [AsParameters] ListQuery query)
    {
        var log = new FaultLog();
        var (limit, position) = query.Read(cursors, Name, log);
        return log.IsClean
            ? Answers.Tagged(
                http, EntityTags.OfEdition(catalogue.Version),
                ListQuery.Page(All(catalogue), Name, limit, position, IdOf, Summary, cursors), ListType)
            : Problems.Of(log);
    }

    private IResult Get(HttpContext http, Catalogue catalogue, string id) =>
        All(catalogue).FirstOrDefault(item => IdOf(item) == id) is { } found
            ? Answers.Tagged(http, EntityTags.OfEdition(catalogue.Version), Whole(found, catalogue), WholeType)
            : Problems.Of(ProblemTypes.NotFound);
}
