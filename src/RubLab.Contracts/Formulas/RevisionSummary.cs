namespace RubLab.Contracts.Formulas;

/// <summary>One immutable revision of a formula in a list.</summary>
/// <param name="Revision">Its number, from 1.</param>
/// <param name="Name">The name it had.</param>
/// <param name="Kind">The kind it had.</param>
/// <param name="CreatedAt">When it was stored, UTC.</param>
public sealed record RevisionSummary(long Revision, string Name, string Kind, string CreatedAt);
