using System.Runtime.InteropServices.JavaScript;
using System.Text.Json;
using RubLab.Contracts.Ingredients;
using RubLab.Core.Faults;
using RubLab.Core.Ingredients;

namespace RubLab.Page.Exports;

/// <summary>Amounts converted and cups weighed, for the page's script.</summary>
public static partial class Measuring
{
    /// <summary>Computes what <c>POST /v1/conversions</c> would answer.</summary>
    /// <returns><c>{"ok": answer}</c> or <c>{"errors": [...]}</c>.</returns>
    [JSExport]
    public static string Convert(string request) => Computation.Run(
        request, RequestJson.Default.ConversionsRequest, read => Conversions.Compute(read, Reference.Catalogue), AnswerJson.Default.ConversionsResponse);

    /// <summary>What <c>PUT /v1/densities/{ingredient}/{form}</c> would answer, revision 0, without storing anything.</summary>
    /// <returns><c>{"ok": answer}</c> or <c>{"errors": [...]}</c>.</returns>
    [JSExport]
    public static string Weigh(string ingredient, string form, string request) => Computation.Run(
        request, RequestJson.Default.OwnDensityRequest, read => Weigh(ingredient, form, read), AnswerJson.Default.OwnDensityResponse);

    /// <summary>Takes the kitchen's own densities in place of the reference's, all at once.</summary>
    /// <param name="densities">A JSON array of <c>{ ingredient, form, weighings }</c>, as <c>GET /v1/densities</c> lists them.</param>
    [JSExport]
    public static void Use(string densities)
    {
        var own = new Dictionary<(string Ingredient, string Form), OwnDensity>();
        foreach (var density in JsonSerializer.Deserialize(densities, RequestJson.OfKept.KeptDensityArray) ?? [])
        {
            if (OwnDensities.Check(new OwnDensityRequest { Weighings = density.Weighings }, Reference.Edition).Value is { } good)
            {
                own[(density.Ingredient, density.Form)] = good;
            }
        }

        Reference.Use(own);
    }

    private static Result<OwnDensityResponse> Weigh(string ingredientId, string formId, OwnDensityRequest request)
    {
        var check = OwnDensities.Check(request, Reference.Edition);
        var answer = check.IsGood
            && Reference.Edition.TryFindIngredient(ingredientId, out var ingredient)
            && ingredient.TryFindForm(formId, out var form)
            ? OwnDensities.From(check.Value, request, ingredient, form, 0, "")
            : null;
        return check.Log.ResultOf(answer);
    }
}
