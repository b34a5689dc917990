namespace RubLab.Storage.Formulas;

/// <summary>What a caller gives to be stored.</summary>
/// <param name="Name">For people.</param>
/// <param name="Kind">One word, opaque here.</param>
/// <param name="Document">JSON text, opaque here.</param>
public sealed record FormulaContent(string Name, string Kind, string Document);
