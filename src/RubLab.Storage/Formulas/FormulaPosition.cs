namespace RubLab.Storage.Formulas;

/// <summary>The last formula of a page: the next page starts after it, even if it has been renamed or deleted since.</summary>
public sealed record FormulaPosition(string Name, string Id);
