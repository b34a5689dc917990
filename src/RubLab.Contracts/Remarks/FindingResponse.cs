using RubLab.Contracts.Reading;
using RubLab.Core.Remarks;

namespace RubLab.Contracts.Remarks;

/// <summary>What a computation noticed on good input.</summary>
/// <param name="Code">A stable word for what was noticed.</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="Message">What was noticed, in plain words.</param>
/// <param name="Pointer">JSON pointer into what was sent; absent where it is about the whole.</param>
/// <param name="Parameters">The figures and words of the message.</param>
/// <param name="SourceId">Id of the source of a figure that was taken; absent where none was.</param>
public sealed record FindingResponse(
    string Code, string Severity, string Message, string? Pointer, IReadOnlyDictionary<string, object> Parameters, string? SourceId)
{
    public static IReadOnlyList<FindingResponse> From(FindingLog log) =>
        log.Findings.Select(f => new FindingResponse(
            f.Code, Vocabulary.Severities[f.Severity], f.Message, f.Pointer, f.Parameters, f.SourceId)).ToList();
}
