using RubLab.Api.Callers;
using RubLab.Api.Formulas;
using RubLab.Api.Http;
using RubLab.Contracts.Json;
using RubLab.Contracts.Sauces;
using RubLab.Contracts.Scaling;
using RubLab.Storage;

namespace RubLab.Api.Endpoints;

internal static class SaucesEndpoints
{
    public static void MapSauces(this RouteGroupBuilder api) => api.MapPost("/sauces", Post)
        .WithTags("Bench")
        .Described(
            "computeSauce", "What goes into the pot of a sauce, how far it is boiled down, and how salty it ends.",
            "A balance on what does not evaporate. The card's cups are taken as measured in cups, so their densities widen the bands. Acidity and shelf life are not computed.")
        .Produces<SauceResponse>()
        .Refuses()
        .TakesBody();

    private static async Task<IResult> Post(HttpContext http, KitchenCatalogue kitchen, Database database, SauceRequest request)
    {
        var named = new TreatmentRequest { FormulaId = request.FormulaId, Revision = request.Revision };
        var lookup = await StoredFormulas.FetchAsync([named], Caller.Of(http), database, http.RequestAborted);
        var result = SauceAnswers.Compute(request, kitchen.Catalogue, lookup);
        return result.IsGood
            ? Answers.ComputedShort(http, result.Value, RubLabJson.Default.SauceResponse)
            : Problems.Of(result.Log);
    }
}
