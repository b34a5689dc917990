namespace RubLab.Storage.Densities;

internal sealed class DensityRow
{
    public const string Columns =
        "ingredient_id AS IngredientId, form_id AS FormId, revision AS Revision, document AS Document, updated_at AS UpdatedAt";

    public const string RevisionColumns =
        "ingredient_id AS IngredientId, form_id AS FormId, revision AS Revision, document AS Document, created_at AS UpdatedAt";

    public string IngredientId { get; init; } = "";

    public string FormId { get; init; } = "";

    public long Revision { get; init; }

    public string Document { get; init; } = "";

    public string UpdatedAt { get; init; } = "";

    public StoredDensity ToDensity() => new(IngredientId, FormId, Revision, Document, Timestamp.Read(UpdatedAt));
}
