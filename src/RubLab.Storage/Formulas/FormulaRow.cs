namespace RubLab.Storage.Formulas;

internal sealed class FormulaRow
{
    public const string Columns =
        "id AS Id, revision AS Revision, name AS Name, kind AS Kind, document AS Document, created_at AS CreatedAt, updated_at AS UpdatedAt";

    public string Id { get; init; } = "";

    public long Revision { get; init; }

    public string Name { get; init; } = "";

    public string Kind { get; init; } = "";

    public string Document { get; init; } = "";

    public string CreatedAt { get; init; } = "";

    public string UpdatedAt { get; init; } = "";

    public StoredFormula ToFormula() => new(Id, Revision, Name, Kind, Document, Timestamp.Read(CreatedAt), Timestamp.Read(UpdatedAt));
}
