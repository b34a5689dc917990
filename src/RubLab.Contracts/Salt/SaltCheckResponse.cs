using RubLab.Contracts.Remarks;

namespace RubLab.Contracts.Salt;

/// <summary>The ledger of a stack before anything is weighed.</summary>
/// <param name="Ledger">The ledger of the pile line.</param>
/// <param name="Findings">What the computation noticed.</param>
/// <param name="Cautions">What must be said for safety.</param>
/// <param name="DataVersion">The edition of the reference data.</param>
public sealed record SaltCheckResponse(
    SaltLedgerResponse Ledger, IReadOnlyList<FindingResponse> Findings, IReadOnlyList<CautionResponse> Cautions, string DataVersion);
