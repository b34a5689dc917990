namespace RubLab.Storage.Densities;

/// <summary>Plain SQL that SQLite and PostgreSQL both take.</summary>
internal static class DensitySql
{
    /// <summary>Writes over a tombstone, whose numbering goes on; gives no row if there is a density.</summary>
    public const string Create = $"""
        INSERT INTO densities (kitchen_id, ingredient_id, form_id, revision, document, updated_at, deleted_at)
        VALUES (@kitchenId, @ingredientId, @formId, 1, @document, @Now, NULL)
        ON CONFLICT (kitchen_id, ingredient_id, form_id) DO UPDATE SET
            revision = densities.revision + 1, document = excluded.document, updated_at = excluded.updated_at, deleted_at = NULL
        WHERE densities.deleted_at IS NOT NULL
        RETURNING {DensityRow.Columns}
        """;

    public const string Replace = $"""
        UPDATE densities SET revision = revision + 1, document = @document, updated_at = @Now
        WHERE {One} AND revision = @expectedRevision
        RETURNING {DensityRow.Columns}
        """;

    public const string Delete = $"""
        UPDATE densities SET deleted_at = @Now
        WHERE {One} AND revision = @expectedRevision
        RETURNING {DensityRow.Columns}
        """;

    public const string Get = $"SELECT {DensityRow.Columns} FROM densities WHERE {One}";

    /// <summary>0 when there is none.</summary>
    public const string CurrentRevision = $"SELECT revision FROM densities WHERE {One}";

    public const string All = $"""
        SELECT {DensityRow.Columns} FROM densities
        WHERE kitchen_id = @kitchenId AND deleted_at IS NULL
        ORDER BY ingredient_id, form_id
        """;

    public const string AddRevision = """
        INSERT INTO density_revisions (kitchen_id, ingredient_id, form_id, revision, document, created_at)
        VALUES (@kitchenId, @IngredientId, @FormId, @Revision, @Document, @Now)
        """;

    public const string ListRevisions = $"""
        SELECT {DensityRow.RevisionColumns} FROM density_revisions
        WHERE kitchen_id = @kitchenId AND ingredient_id = @ingredientId AND form_id = @formId AND revision > @after
        ORDER BY revision LIMIT @limit
        """;

    public const string RaiseKitchen = "UPDATE kitchens SET density_revision = density_revision + 1 WHERE id = @kitchenId";

    private const string One = "kitchen_id = @kitchenId AND ingredient_id = @ingredientId AND form_id = @formId AND deleted_at IS NULL";

    public static string List(bool afterPosition) => $"""
        SELECT {DensityRow.Columns} FROM densities
        WHERE kitchen_id = @kitchenId AND deleted_at IS NULL{(afterPosition ? " AND (ingredient_id, form_id) > (@ingredientId, @formId)" : "")}
        ORDER BY ingredient_id, form_id LIMIT @limit
        """;
}
