using RubLab.Api.Callers;
using RubLab.Api.Formulas;
using RubLab.Api.Http;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Json;
using RubLab.Contracts.Scaling;
using RubLab.Storage;

namespace RubLab.Api.Endpoints;

internal static class FormulaChangesEndpoints
{
    public static void MapFormulaChanges(this RouteGroupBuilder api) => api.MapPost("/formula-changes", Post)
        .WithTags("Formulas")
        .Described(
            "computeFormulaChange", "One line of a formula changed while the salt or the dose is held.",
            "Answers with the changed formula, ready to be stored, and what it comes to before and after. Nothing is stored.")
        .Produces<FormulaChangeResponse>()
        .Refuses()
        .TakesBody();

    private static async Task<IResult> Post(HttpContext http, KitchenCatalogue kitchen, Database database, FormulaChangeRequest request)
    {
        var named = new TreatmentRequest { FormulaId = request.FormulaId, Revision = request.Revision };
        var lookup = await StoredFormulas.FetchAsync([named], Caller.Of(http), database, http.RequestAborted);
        var result = FormulaChanges.Compute(request, kitchen.Catalogue, lookup);
        return result.IsGood
            ? Answers.ComputedShort(http, result.Value, RubLabJson.Default.FormulaChangeResponse)
            : Problems.Of(result.Log);
    }
}
