using System.Runtime.InteropServices.JavaScript;
using RubLab.Contracts.Formulas;
using RubLab.Core.Faults;

namespace RubLab.Page.Exports;

/// <summary>Formulas read and changed, for the page's script.</summary>
public static partial class Formulas
{
    /// <summary>What <c>GET /v1/formulas/{id}</c> would give for a formula that is not stored yet: revision 0, no id.</summary>
    /// <param name="request">The formula as it would be sent.</param>
    /// <returns><c>{"ok": answer}</c> or <c>{"errors": [...]}</c>.</returns>
    [JSExport]
    public static string Read(string request) =>
        Computation.Run(request, RequestJson.Default.FormulaRequest, Check, AnswerJson.Default.FormulaResponse);

    /// <summary>Computes what <c>POST /v1/formula-changes</c> would answer.</summary>
    /// <param name="request">The body of the request, the formula itself in it.</param>
    /// <returns><c>{"ok": answer}</c> or <c>{"errors": [...]}</c>.</returns>
    [JSExport]
    public static string Change(string request) => Computation.Run(
        request, RequestJson.Default.FormulaChangeRequest,
        read => FormulaChanges.Compute(read, Reference.Catalogue, (_, _) => null), AnswerJson.Default.FormulaChangeResponse);

    private static Result<FormulaResponse> Check(FormulaRequest request)
    {
        var check = FormulaAnswers.Check(request, Reference.Catalogue);
        var answer = check.IsGood ? FormulaAnswers.From(check.Value, request, "", 0, "", Reference.Catalogue) : null;
        return check.Log.ResultOf(answer);
    }
}
