using System.Diagnostics.CodeAnalysis;

namespace RubLab.Storage.Formulas;

/// <summary>What came of creating, replacing or deleting a formula.</summary>
public sealed record FormulaWrite
{
    private FormulaWrite(WriteOutcome outcome, StoredFormula? formula, long? currentRevision)
    {
        Outcome = outcome;
        Formula = formula;
        CurrentRevision = currentRevision;
    }

    public WriteOutcome Outcome { get; }

    [MemberNotNullWhen(true, nameof(Formula))]
    public bool IsWritten => Formula is not null;

    /// <summary>The formula as written, or as it last was if this deleted it; null when nothing was written.</summary>
    public StoredFormula? Formula { get; }

    /// <summary>The revision the formula is at, unless it is missing; after a deletion its last.</summary>
    public long? CurrentRevision { get; }

    internal static FormulaWrite Missing { get; } = new(WriteOutcome.Missing, null, null);

    internal static FormulaWrite Written(StoredFormula formula) => new(WriteOutcome.Written, formula, formula.Revision);

    internal static FormulaWrite Taken(long revision) => new(WriteOutcome.Taken, null, revision);

    internal static FormulaWrite Stale(long revision) => new(WriteOutcome.Stale, null, revision);
}
