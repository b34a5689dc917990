using System.Text.Json;
using RubLab.Api.Callers;
using RubLab.Api.Http;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Json;
using RubLab.Contracts.Reading;
using RubLab.Core.Catalogues;
using RubLab.Storage;
using RubLab.Storage.Formulas;

namespace RubLab.Api.Formulas;

/// <summary>Changing the formula library.</summary>
internal static class FormulaWrites
{
    private static readonly Precondition Precondition = new("this formula", "The formula is");

    public static async Task<IResult> Create(HttpContext http, Catalogue catalogue, KitchenCatalogue kitchen, Database database, FormulaRequest request)
    {
        var check = FormulaAnswers.Check(request, catalogue);
        if (!check.IsGood)
        {
            return Problems.Of(check.Log);
        }

        if (!Replays.TryReadKey(http, out var key, out var refusal))
        {
            return refusal;
        }

        var caller = Caller.Of(http);
        var document = Document(request);
        await using var work = await database.BeginAsync(Intent.Write, http.RequestAborted);
        if (key is not null && await Replays.FindAsync(work, caller, key, document, http.RequestAborted) is { } earlier)
        {
            return earlier;
        }

        var draft = new FormulaContent(check.Value.Name, Vocabulary.Kinds[check.Value.Kind], document);
        var write = await work.Formulas.CreateAsync(caller.KitchenId, FormulaIds.For(check.Value.Name), draft, http.RequestAborted);
        var stored = write.Formula ?? throw new InvalidOperationException("A new id was taken.");
        var answer = Answer(stored, kitchen);
        var location = $"/v1/formulas/{stored.Id}";
        if (key is not null)
        {
            await Replays.SaveAsync(work, caller, key, document, answer, location, http.RequestAborted);
        }

        await work.CommitAsync(http.RequestAborted);
        http.Response.Headers.ETag = answer.Tag;
        http.Response.Headers.Location = location;
        return TypedResults.Json(answer.Body, RubLabJson.Default.FormulaResponse, statusCode: StatusCodes.Status201Created);
    }

    public static async Task<IResult> Replace(HttpContext http, Catalogue catalogue, KitchenCatalogue kitchen, Database database, string id, FormulaRequest request)
    {
        var check = FormulaAnswers.Check(request, catalogue);
        if (!check.IsGood)
        {
            return Problems.Of(check.Log);
        }

        var caller = Caller.Of(http);
        await using var work = await database.BeginAsync(Intent.Write, http.RequestAborted);
        var (expected, refusal) = await ExpectedAsync(http, work, caller, id);
        if (refusal is not null)
        {
            return refusal;
        }

        var draft = new FormulaContent(check.Value.Name, Vocabulary.Kinds[check.Value.Kind], Document(request));
        var write = await work.Formulas.ReplaceAsync(caller.KitchenId, id, expected, draft, http.RequestAborted);
        if (!write.IsWritten)
        {
            return Precondition.NotWritten(write.Outcome, write.CurrentRevision);
        }

        var answer = Answer(write.Formula, kitchen);
        await work.CommitAsync(http.RequestAborted);
        http.Response.Headers.ETag = answer.Tag;
        return TypedResults.Json(answer.Body, RubLabJson.Default.FormulaResponse);
    }

    public static async Task<IResult> Delete(HttpContext http, Database database, string id)
    {
        var caller = Caller.Of(http);
        await using var work = await database.BeginAsync(Intent.Write, http.RequestAborted);
        var (expected, refusal) = await ExpectedAsync(http, work, caller, id);
        if (refusal is not null)
        {
            return refusal;
        }

        var write = await work.Formulas.DeleteAsync(caller.KitchenId, id, expected, http.RequestAborted);
        if (!write.IsWritten)
        {
            return Precondition.NotWritten(write.Outcome, write.CurrentRevision);
        }

        await work.CommitAsync(http.RequestAborted);
        return TypedResults.NoContent();
    }

    // Nothing that is not there can have changed, so 404 comes before anything about If-Match.
    private static async Task<(long Revision, IResult? Refusal)> ExpectedAsync(HttpContext http, UnitOfWork work, Caller caller, string id)
    {
        if (await work.Formulas.GetAsync(caller.KitchenId, id, http.RequestAborted) is not { } stored)
        {
            return (0, Problems.Of(ProblemTypes.NotFound));
        }

        return Precondition.Over(http.Request, stored.Revision);
    }

    private static StoredAnswer Answer(StoredFormula stored, KitchenCatalogue kitchen) => new(
        FormulaDocuments.Answer(stored.Id, stored.Revision, stored.Document, stored.UpdatedAt, kitchen.Catalogue),
        EntityTags.OfFormula(stored.Revision, kitchen.Catalogue.Version, kitchen.DensityRevision));

    private static string Document(FormulaRequest request) => JsonSerializer.Serialize(request, RubLabJson.Default.FormulaRequest);
}
