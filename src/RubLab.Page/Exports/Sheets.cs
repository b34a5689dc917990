using System.Runtime.InteropServices.JavaScript;
using RubLab.Contracts.Salt;
using RubLab.Contracts.Scaling;

namespace RubLab.Page.Exports;

/// <summary>Batch sheets and salt checks, for the page's script.</summary>
public static partial class Sheets
{
    /// <summary>Computes what <c>POST /v1/batch-sheets</c> would answer.</summary>
    /// <param name="request">The body of the request.</param>
    /// <param name="formulas">The stored formulas it may name, a JSON object of id to what <c>GET /v1/formulas/{id}</c> gave.</param>
    /// <returns><c>{"ok": answer}</c> or <c>{"errors": [...]}</c>.</returns>
    [JSExport]
    public static string Compute(string request, string formulas) => Computation.Run(
        request, RequestJson.Default.BatchSheetRequest,
        read => BatchSheets.Compute(read, Reference.Catalogue, new StoredFormulas(formulas).Find), AnswerJson.Default.BatchSheetResponse);

    /// <summary>Computes what <c>POST /v1/salt-checks</c> would answer.</summary>
    /// <param name="request">The body of the request.</param>
    /// <param name="formulas">As for <see cref="Compute"/>.</param>
    /// <returns><c>{"ok": answer}</c> or <c>{"errors": [...]}</c>.</returns>
    [JSExport]
    public static string CheckSalt(string request, string formulas) => Computation.Run(
        request, RequestJson.Default.SaltCheckRequest,
        read => SaltChecks.Compute(read, Reference.Catalogue, new StoredFormulas(formulas).Find), AnswerJson.Default.SaltCheckResponse);
}
