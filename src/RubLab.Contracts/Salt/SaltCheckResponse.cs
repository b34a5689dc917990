using RubLab.Contracts.Remarks;

namespace RubLab.Contracts.Salt;

/// <summary>The ledger of a stack before anything is weighed.</summary>
public sealed record SaltCheckResponse(
    SaltLedgerResponse Ledger, IReadOnlyList<FindingResponse> Findings, IReadOnlyList<CautionResponse> Cautions, string DataVersion);
