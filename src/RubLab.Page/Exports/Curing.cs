using System.Runtime.InteropServices.JavaScript;
using System.Text.Json;
using RubLab.Contracts.Curing;
using RubLab.Contracts.Remarks;

namespace RubLab.Page.Exports;

/// <summary>Cures, for the page's script, and what must be known before one is weighed.</summary>
public static partial class Curing
{
    /// <summary>Computes what <c>POST /v1/cures</c> would answer.</summary>
    /// <returns><c>{"ok": answer}</c> or <c>{"errors": [...]}</c>.</returns>
    [JSExport]
    public static string Compute(string request) => Computation.Run(
        request, RequestJson.Default.CureRequest, read => Cures.Compute(read, Reference.Catalogue), AnswerJson.Default.CureResponse);

    /// <summary>The products a range or a legal level is of, a JSON array of their ids.</summary>
    [JSExport]
    public static string Products() => JsonSerializer.Serialize([.. Reference.Catalogue.Products], RequestJson.Default.StringArray);

    /// <summary>What must be said wherever there is a cure, a JSON array as answers have it.</summary>
    [JSExport]
    public static string Cautions() => JsonSerializer.Serialize(
        CautionResponse.From(Reference.Catalogue.Cautions.Where(caution => caution.AppliesTo == "cure")),
        AnswerJson.Default.IReadOnlyListCautionResponse);

    /// <summary>Parts per million of sodium nitrite as those of potassium nitrite with as much nitrite in it.</summary>
    [JSExport]
    public static double AsPotassiumNitrite(double partsPerMillion) => partsPerMillion * Reference.Catalogue.Constants.PotassiumPerSodiumNitrite;
}
