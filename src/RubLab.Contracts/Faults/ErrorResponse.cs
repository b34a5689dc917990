using RubLab.Core.Faults;

namespace RubLab.Contracts.Faults;

/// <summary>One broken rule: where, which, why.</summary>
public sealed record ErrorResponse(string Pointer, string Code, string Detail, IReadOnlyDictionary<string, object> Parameters)
{
    public static IReadOnlyList<ErrorResponse> From(FaultLog log) =>
        log.Faults.Select(f => new ErrorResponse(f.Pointer, f.Code, f.Detail, f.Parameters)).ToList();
}
