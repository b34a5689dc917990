namespace RubLab.Storage.Formulas;

/// <summary>Plain SQL that SQLite and PostgreSQL both take.</summary>
internal static class FormulaSql
{
    /// <summary>Writes over a tombstone, whose numbering goes on; gives no row if a live formula has the id.</summary>
    public const string Create = $"""
        INSERT INTO formulas (kitchen_id, id, revision, name, name_key, kind, document, created_at, updated_at, deleted_at)
        VALUES (@kitchenId, @id, 1, @Name, @nameKey, @Kind, @Document, @Now, @Now, NULL)
        ON CONFLICT (kitchen_id, id) DO UPDATE SET
            revision = formulas.revision + 1, name = excluded.name, name_key = excluded.name_key, kind = excluded.kind,
            document = excluded.document, created_at = excluded.created_at, updated_at = excluded.updated_at, deleted_at = NULL
        WHERE formulas.deleted_at IS NOT NULL
        RETURNING {FormulaRow.Columns}
        """;

    public const string Replace = $"""
        UPDATE formulas SET revision = revision + 1, name = @Name, name_key = @nameKey, kind = @Kind, document = @Document, updated_at = @Now
        WHERE kitchen_id = @kitchenId AND id = @id AND revision = @expectedRevision AND deleted_at IS NULL
        RETURNING {FormulaRow.Columns}
        """;

    public const string Delete = $"""
        UPDATE formulas SET deleted_at = @Now
        WHERE kitchen_id = @kitchenId AND id = @id AND revision = @expectedRevision AND deleted_at IS NULL
        RETURNING {FormulaRow.Columns}
        """;

    public const string Get = $"SELECT {FormulaRow.Columns} FROM formulas WHERE kitchen_id = @kitchenId AND id = @id AND deleted_at IS NULL";

    /// <summary>0 when there is none.</summary>
    public const string CurrentRevision = "SELECT revision FROM formulas WHERE kitchen_id = @kitchenId AND id = @id AND deleted_at IS NULL";

    public const string AddRevision = """
        INSERT INTO formula_revisions (kitchen_id, id, revision, name, kind, document, created_at)
        VALUES (@kitchenId, @Id, @Revision, @Name, @Kind, @Document, @Now)
        """;

    public const string GetRevision =
        $"SELECT {FormulaRevisionRow.Columns} FROM formula_revisions WHERE kitchen_id = @kitchenId AND id = @id AND revision = @revision";

    public const string ListRevisions = $"""
        SELECT {FormulaRevisionRow.Columns} FROM formula_revisions
        WHERE kitchen_id = @kitchenId AND id = @id AND revision > @after
        ORDER BY revision LIMIT @limit
        """;

    /// <summary>A condition is there or not, rather than true for null: a plan is then made for the question asked.</summary>
    public static string List(bool ofKind, bool afterPosition) => $"""
        SELECT {FormulaRow.Columns} FROM formulas
        WHERE kitchen_id = @kitchenId AND deleted_at IS NULL{(ofKind ? " AND kind = @kind" : "")}{(afterPosition ? " AND (name_key, id) > (@nameKey, @id)" : "")}
        ORDER BY name_key, id LIMIT @limit
        """;
}
