using System.Runtime.InteropServices.JavaScript;
using System.Text.Json;
using RubLab.Contracts.Json;
using RubLab.Contracts.Scaling;

namespace RubLab.Page.Exports;

/// <summary>Batch sheets, for the page's script.</summary>
public static partial class Sheets
{
    /// <summary>Computes what <c>POST /v1/batch-sheets</c> would answer.</summary>
    /// <param name="request">The body of the request.</param>
    /// <param name="formulas">The stored formulas it may name, a JSON object of id to what <c>GET /v1/formulas/{id}</c> gave.</param>
    /// <returns><c>{"ok": answer}</c> or <c>{"errors": [...]}</c>.</returns>
    [JSExport]
    public static string Compute(string request, string formulas)
    {
        try
        {
            var stored = new StoredFormulas(formulas);
            return JsonSerializer.Deserialize(request, RubLabJson.Default.BatchSheetRequest) is { } read
                ? Answer.From(BatchSheets.Compute(read, Reference.Catalogue, stored.Find), RubLabJson.Default.BatchSheetResponse)
                : throw new JsonException("The request is null.");
        }
        catch (JsonException fault)
        {
            return Answer.Unreadable(fault);
        }
    }
}
