using RubLab.Core.Remarks;

namespace RubLab.Contracts.Remarks;

/// <summary>What must be said for safety, and whose word it defers to.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Text">What must be said.</param>
/// <param name="DefersTo">Whose word counts.</param>
/// <param name="SourceId">Id of the source.</param>
public sealed record CautionResponse(string Id, string Text, string DefersTo, string SourceId)
{
    public static IReadOnlyList<CautionResponse> From(IEnumerable<Caution> cautions) =>
        cautions.Select(c => new CautionResponse(c.Id, c.Text, c.DefersTo, c.SourceId)).ToList();
}
