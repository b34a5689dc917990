using RubLab.Contracts.Salt;

namespace RubLab.Contracts.Scaling;

/// <summary>The salt ledger of one pile line.</summary>
public sealed record LineLedgerResponse(string Line, SaltLedgerResponse Ledger);
