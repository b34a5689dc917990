namespace RubLab.Storage.Formulas;

/// <summary>A formula as it once was; never changed, and kept when the formula is deleted, so that an old batch sheet can be explained.</summary>
public sealed record FormulaRevision(string Id, long Revision, string Name, string Kind, string Document, DateTimeOffset CreatedAt);
