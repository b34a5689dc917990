namespace RubLab.Contracts.Formulas;

/// <summary>One immutable revision of a formula in a list.</summary>
public sealed record RevisionSummary(long Revision, string Name, string Kind, string CreatedAt);
