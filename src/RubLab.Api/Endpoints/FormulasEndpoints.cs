using RubLab.Api.Callers;
using RubLab.Api.Formulas;
using RubLab.Api.Http;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Listing;

namespace RubLab.Api.Endpoints;

internal static class FormulasEndpoints
{
    public static void MapFormulas(this RouteGroupBuilder api)
    {
        var routes = api.MapGroup("/formulas").WithTags("Formulas");
        routes.MapGet("/", FormulaReads.List)
            .Described("listFormulas", "The kitchen's formulas by name.")
            .Produces<ListResponse<FormulaSummary>>()
            .Produces(StatusCodes.Status304NotModified)
            .Refuses(ProblemTypes.Unprocessable);
        routes.MapPost("/", FormulaWrites.Create)
            .Described(
                "createFormula", "Stores a formula.",
                "Kept exactly as sent and read back with ratios and shares. Send an Idempotency-Key to be able to send it twice safely.")
            .WithMetadata(new WritesMetadata())
            .Produces<FormulaResponse>(StatusCodes.Status201Created)
            .Refuses()
            .TakesBody();
        routes.MapGet("/{id}", FormulaReads.Get)
            .Described("getFormula", "One formula: as authored, and what it comes to.", "JSON, or a schema.org Recipe where Accept likes application/ld+json best.")
            .Produces<FormulaResponse>(StatusCodes.Status200OK, Negotiation.Json, Negotiation.JsonLd)
            .Produces(StatusCodes.Status304NotModified)
            .Refuses(ProblemTypes.NotFound);
        routes.MapPut("/{id}", FormulaWrites.Replace)
            .Described("replaceFormula", "Stores a new revision.", "If-Match must carry the ETag that was read.")
            .WithMetadata(new WritesMetadata())
            .Produces<FormulaResponse>()
            .Refuses(ProblemTypes.NotFound, ProblemTypes.Stale, ProblemTypes.PreconditionNeeded)
            .TakesBody();
        routes.MapDelete("/{id}", FormulaWrites.Delete)
            .Described("deleteFormula", "Takes a formula out of the library.", "Its revisions stay readable, so that old sheets can be explained. If-Match must carry the ETag that was read.")
            .WithMetadata(new WritesMetadata())
            .Produces(StatusCodes.Status204NoContent)
            .Refuses(ProblemTypes.NotFound, ProblemTypes.Stale, ProblemTypes.PreconditionNeeded);
        routes.MapGet("/{id}/revisions", FormulaReads.ListRevisions)
            .Described("listFormulaRevisions", "The revisions of a formula, oldest first; they never change.")
            .Produces<ListResponse<RevisionSummary>>()
            .Produces(StatusCodes.Status304NotModified)
            .Refuses(ProblemTypes.NotFound, ProblemTypes.Unprocessable);
        routes.MapGet("/{id}/revisions/{revision}", FormulaReads.GetRevision)
            .Described("getFormulaRevision", "One revision of a formula.", "JSON, or a schema.org Recipe where Accept likes application/ld+json best.")
            .Produces<FormulaResponse>(StatusCodes.Status200OK, Negotiation.Json, Negotiation.JsonLd)
            .Produces(StatusCodes.Status304NotModified)
            .Refuses(ProblemTypes.NotFound);
    }
}
