using RubLab.Contracts.Reading;
using RubLab.Core.Remarks;

namespace RubLab.Contracts.Remarks;

/// <summary>What a computation noticed on good input.</summary>
public sealed record FindingResponse(
    string Code, string Severity, string Message, string? Pointer, IReadOnlyDictionary<string, object> Parameters, string? SourceId)
{
    public static IReadOnlyList<FindingResponse> From(FindingLog log) =>
        log.Findings.Select(f => new FindingResponse(
            f.Code, Vocabulary.Severities[f.Severity], f.Message, f.Pointer, f.Parameters, f.SourceId)).ToList();
}
