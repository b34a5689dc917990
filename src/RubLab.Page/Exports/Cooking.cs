using System.Runtime.InteropServices.JavaScript;
using System.Text.Json;
using RubLab.Contracts.Yields;
using RubLab.Core.Faults;
using RubLab.Core.Yields;

namespace RubLab.Page.Exports;

/// <summary>Cooks weighed before and after, for the page's script.</summary>
public static partial class Cooking
{
    /// <summary>What <c>PUT /v1/yields/{cut}</c> would answer, revision 0, without storing anything.</summary>
    /// <returns><c>{"ok": answer}</c> or <c>{"errors": [...]}</c>.</returns>
    [JSExport]
    public static string Record(string cut, string request) => Computation.Run(
        request, RequestJson.Default.OwnYieldRequest, read => Record(cut, read), AnswerJson.Default.OwnYieldResponse);

    /// <summary>Takes the kitchen's own yields in place of the reference's, all at once.</summary>
    /// <param name="yields">A JSON array of <c>{ cut, records }</c>, as <c>GET /v1/yields</c> lists them.</param>
    [JSExport]
    public static void Use(string yields)
    {
        var own = new Dictionary<string, IReadOnlyList<OwnYield>>();
        foreach (var kept in JsonSerializer.Deserialize(yields, RequestJson.OfKept.KeptYieldArray) ?? [])
        {
            if (Reference.Edition.TryFindCut(kept.Cut, out var cut)
                && OwnYieldRecords.Check(new OwnYieldRequest { Records = kept.Records }, cut, Reference.Edition).Value is { } good)
            {
                own[kept.Cut] = good;
            }
        }

        Reference.Use(own);
    }

    private static Result<OwnYieldResponse> Record(string cutId, OwnYieldRequest request)
    {
        if (!Reference.Edition.TryFindCut(cutId, out var cut))
        {
            throw new ArgumentException($"There is no cut '{cutId}'.", nameof(cutId));
        }

        var check = OwnYieldRecords.Check(request, cut, Reference.Edition);
        return check.Log.ResultOf(check.Value is { } yields ? OwnYieldRecords.From(yields, request, cutId, 0, "") : null);
    }
}
