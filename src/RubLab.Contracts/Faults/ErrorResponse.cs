using RubLab.Core.Faults;

namespace RubLab.Contracts.Faults;

/// <summary>One broken rule: where, which, why.</summary>
/// <param name="Pointer">JSON pointer (RFC 6901) into what was sent; empty for the whole of it.</param>
/// <param name="Code">A stable word for the rule.</param>
/// <param name="Detail">The reason in plain words.</param>
/// <param name="Parameters">The figures and words of the reason.</param>
public sealed record ErrorResponse(string Pointer, string Code, string Detail, IReadOnlyDictionary<string, object> Parameters)
{
    public static IReadOnlyList<ErrorResponse> From(FaultLog log) =>
        log.Faults.Select(f => new ErrorResponse(f.Pointer, f.Code, f.Detail, f.Parameters)).ToList();
}
