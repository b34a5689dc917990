namespace RubLab.Contracts.Formulas;

/// <summary>A stored formula in a list.</summary>
public sealed record FormulaSummary(string Id, long Revision, string Name, string Kind, string UpdatedAt);
