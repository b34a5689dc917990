using System.Runtime.InteropServices.JavaScript;
using RubLab.Contracts.Serving;
using RubLab.Contracts.Shopping;

namespace RubLab.Page.Exports;

/// <summary>Purchases for guests and shopping lists, for the page's script.</summary>
public static partial class Purchases
{
    /// <summary>Computes what <c>POST /v1/purchase-plans</c> would answer.</summary>
    /// <param name="request">The body of the request.</param>
    /// <param name="formulas">The stored formulas it may name, a JSON object of id to what <c>GET /v1/formulas/{id}</c> gave.</param>
    /// <returns><c>{"ok": answer}</c> or <c>{"errors": [...]}</c>.</returns>
    [JSExport]
    public static string Plan(string request, string formulas) => Computation.Run(
        request, RequestJson.Default.PurchasePlanRequest,
        read => PurchasePlans.Compute(read, Reference.Catalogue, new StoredFormulas(formulas).Find), AnswerJson.Default.PurchasePlanResponse);

    /// <summary>Computes what <c>POST /v1/portion-counts</c> would answer.</summary>
    /// <returns><c>{"ok": answer}</c> or <c>{"errors": [...]}</c>.</returns>
    [JSExport]
    public static string Count(string request) => Computation.Run(
        request, RequestJson.Default.PortionCountRequest, read => PortionCounts.Compute(read, Reference.Catalogue), AnswerJson.Default.PortionCountResponse);

    /// <summary>Computes what <c>POST /v1/shopping-lists</c> would answer.</summary>
    /// <param name="request">The body of the request.</param>
    /// <param name="formulas">As for <see cref="Plan"/>.</param>
    /// <returns><c>{"ok": answer}</c> or <c>{"errors": [...]}</c>.</returns>
    [JSExport]
    public static string Shop(string request, string formulas) => Computation.Run(
        request, RequestJson.Default.ShoppingListRequest,
        read => ShoppingLists.Compute(read, Reference.Catalogue, new StoredFormulas(formulas).Find), AnswerJson.Default.ShoppingListResponse);
}
