using System.Runtime.InteropServices.JavaScript;
using RubLab.Contracts.Brining;
using RubLab.Contracts.Sauces;

namespace RubLab.Page.Exports;

/// <summary>Liquids to inject or to soak in, and sauces, for the page's script.</summary>
public static partial class Liquids
{
    /// <summary>Computes what <c>POST /v1/brines</c> would answer.</summary>
    /// <returns><c>{"ok": answer}</c> or <c>{"errors": [...]}</c>.</returns>
    [JSExport]
    public static string Brine(string request) => Computation.Run(
        request, RequestJson.Default.BrineRequest, read => Brines.Compute(read, Reference.Catalogue), AnswerJson.Default.BrineResponse);

    /// <summary>Computes what <c>POST /v1/sauces</c> would answer.</summary>
    /// <param name="request">The body of the request.</param>
    /// <param name="formulas">The stored formula it may name, a JSON object of id to what <c>GET /v1/formulas/{id}</c> gave.</param>
    /// <returns><c>{"ok": answer}</c> or <c>{"errors": [...]}</c>.</returns>
    [JSExport]
    public static string Sauce(string request, string formulas) => Computation.Run(
        request, RequestJson.Default.SauceRequest,
        read => SauceAnswers.Compute(read, Reference.Catalogue, new StoredFormulas(formulas).Find), AnswerJson.Default.SauceResponse);
}
