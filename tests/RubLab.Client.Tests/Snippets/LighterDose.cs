using System.Net;
using RubLab.Client;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Quantities;

namespace RubLab.Snippets;

internal static class LighterDose
{
    /// <summary>Replaces a formula's dose; when somebody else was faster, says so instead of writing over it.</summary>
    public static async Task<string> SetAsync(RubLabClient client, string id, FormulaRequest formula, double gramsPerKilogram)
    {
        var stored = await client.Formulas.GetAsync(id);
        try
        {
            var replaced = await client.Formulas.ReplaceAsync(
                id, stored.ETag, formula with { Dose = QuantityRequest.Of(gramsPerKilogram, "g/kg") });
            return $"revision {replaced.Value.Revision}";
        }
        catch (RubLabProblemException refused) when (refused.Status == HttpStatusCode.PreconditionFailed)
        {
            return "It has changed meanwhile: read it again.";
        }
        catch (RubLabProblemException refused) when (refused.Status == HttpStatusCode.UnprocessableEntity)
        {
            return string.Join("\n", refused.Errors.Select(e => $"{e.Pointer} {e.Code}: {e.Detail}"));
        }
    }
}
