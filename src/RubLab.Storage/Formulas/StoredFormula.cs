namespace RubLab.Storage.Formulas;

/// <summary>A formula as it now is.</summary>
/// <param name="Id">Unique within its kitchen.</param>
/// <param name="Revision">From 1 up, without gaps, through deletion and re-creation too.</param>
/// <param name="Name">As written; lists order it without regard to case.</param>
/// <param name="Kind">One word, opaque here.</param>
/// <param name="Document">JSON text, opaque here.</param>
/// <param name="CreatedAt">When it was created, or created again after a deletion.</param>
/// <param name="UpdatedAt">When this revision was written.</param>
public sealed record StoredFormula(
    string Id, long Revision, string Name, string Kind, string Document, DateTimeOffset CreatedAt, DateTimeOffset UpdatedAt);
