using RubLab.Contracts.Salt;

namespace RubLab.Contracts.Scaling;

/// <summary>The salt ledger of one pile line.</summary>
/// <param name="Line">Id of the pile line.</param>
/// <param name="Ledger">Its ledger.</param>
public sealed record LineLedgerResponse(string Line, SaltLedgerResponse Ledger);
