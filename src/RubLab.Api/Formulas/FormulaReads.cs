using System.Globalization;
using RubLab.Api.Callers;
using RubLab.Api.Http;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Json;
using RubLab.Contracts.Listing;
using RubLab.Contracts.Outputs;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Storage;
using RubLab.Storage.Formulas;

namespace RubLab.Api.Formulas;

/// <summary>Reading the formula library.</summary>
internal static class FormulaReads
{
    private const string FormulasList = "formulas";

    public static async Task<IResult> List(
        HttpContext http, Catalogue catalogue, Database database, Cursors cursors, [AsParameters] ListQuery query)
    {
        var log = new FaultLog();
        var (limit, position) = query.Read(cursors, FormulasList, log);
        if (!log.IsClean)
        {
            return Problems.Of(log);
        }

        await using var work = await database.BeginAsync(Intent.Read, http.RequestAborted);
        var caller = Caller.Of(http);
        var after = position is [var name, var id] ? new FormulaPosition(name, id) : null;
        var rows = await work.Formulas.ListAsync(caller.KitchenId, limit + 1, after, cancellation: http.RequestAborted);
        var kitchen = await work.Kitchens.GetAsync(caller.KitchenId, http.RequestAborted);
        var page = rows.Take(limit).Select(f => new FormulaSummary(f.Id, f.Revision, f.Name, f.Kind, FormulaDocuments.Time(f.UpdatedAt))).ToList();
        var next = rows.Count > limit ? cursors.Write(FormulasList, rows[limit - 1].Name, rows[limit - 1].Id) : null;
        var tag = string.Create(CultureInfo.InvariantCulture, $"\"c{kitchen?.LastChange ?? 0}-{catalogue.Version}\"");
        return Answers.Tagged(http, tag, new ListResponse<FormulaSummary>(page, next), RubLabJson.Default.ListResponseFormulaSummary);
    }

    public static async Task<IResult> Get(HttpContext http, KitchenCatalogue kitchen, Database database, string id)
    {
        await using var work = await database.BeginAsync(Intent.Read, http.RequestAborted);
        var caller = Caller.Of(http);
        if (await work.Formulas.GetAsync(caller.KitchenId, id, http.RequestAborted) is not { } stored)
        {
            return Problems.Of(ProblemTypes.NotFound);
        }

        return Answer(http, FormulaDocuments.Answer(stored.Id, stored.Revision, stored.Document, stored.UpdatedAt, kitchen.Catalogue), kitchen);
    }

    public static async Task<IResult> ListRevisions(
        HttpContext http, Catalogue catalogue, Database database, Cursors cursors, string id, [AsParameters] ListQuery query)
    {
        var log = new FaultLog();
        var (limit, position) = query.Read(cursors, RevisionsOf(id), log);
        if (!log.IsClean)
        {
            return Problems.Of(log);
        }

        await using var work = await database.BeginAsync(Intent.Read, http.RequestAborted);
        var caller = Caller.Of(http);
        var after = position is [var text] ? long.Parse(text, CultureInfo.InvariantCulture) : 0;
        var rows = await work.Formulas.ListRevisionsAsync(caller.KitchenId, id, limit + 1, after, http.RequestAborted);
        if (rows.Count == 0 && after == 0)
        {
            return Problems.Of(ProblemTypes.NotFound);
        }

        var page = rows.Take(limit).Select(r => new RevisionSummary(r.Revision, r.Name, r.Kind, FormulaDocuments.Time(r.CreatedAt))).ToList();
        var next = rows.Count > limit ? cursors.Write(RevisionsOf(id), rows[limit - 1].Revision.ToString(CultureInfo.InvariantCulture)) : null;
        var kitchen = await work.Kitchens.GetAsync(caller.KitchenId, http.RequestAborted);
        var tag = string.Create(CultureInfo.InvariantCulture, $"\"c{kitchen?.LastChange ?? 0}\"");
        return Answers.Tagged(http, tag, new ListResponse<RevisionSummary>(page, next), RubLabJson.Default.ListResponseRevisionSummary);
    }

    public static async Task<IResult> GetRevision(HttpContext http, KitchenCatalogue kitchen, Database database, string id, string revision)
    {
        if (!long.TryParse(revision, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
        {
            return Problems.Of(ProblemTypes.NotFound);
        }

        await using var work = await database.BeginAsync(Intent.Read, http.RequestAborted);
        var caller = Caller.Of(http);
        if (await work.Formulas.GetRevisionAsync(caller.KitchenId, id, number, http.RequestAborted) is not { } stored)
        {
            return Problems.Of(ProblemTypes.NotFound);
        }

        return Answer(http, FormulaDocuments.Answer(stored.Id, stored.Revision, stored.Document, stored.CreatedAt, kitchen.Catalogue), kitchen);
    }

    private static IResult Answer(HttpContext http, FormulaResponse formula, KitchenCatalogue kitchen) =>
        Negotiation.Best(http.Request, Negotiation.Json, Negotiation.JsonLd) == Negotiation.JsonLd
            ? Answers.Tagged(
                http, EntityTags.OfRecipe(formula.Revision, kitchen.Catalogue.Version, kitchen.DensityRevision),
                Recipes.From(formula, kitchen.Catalogue), RecipeJson.Default.RecipeResponse, Negotiation.JsonLd)
            : Answers.Tagged(
                http, EntityTags.OfFormula(formula.Revision, kitchen.Catalogue.Version, kitchen.DensityRevision), formula, RubLabJson.Default.FormulaResponse);

    // Each formula's revisions are a list of their own.
    private static string RevisionsOf(string id) => "revisions/" + id;
}
