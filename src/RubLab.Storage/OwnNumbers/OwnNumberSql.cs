namespace RubLab.Storage.OwnNumbers;

/// <summary>Plain SQL that SQLite and PostgreSQL both take, put together once for each table.</summary>
internal sealed class OwnNumberSql
{
    public OwnNumberSql(string table, string revisions, IReadOnlyList<string> keyColumns, string kitchenRevision)
    {
        string[] ids = [.. Ids.Take(keyColumns.Count)];
        var key = string.Join(", ", keyColumns);
        var keyValues = string.Join(", ", ids.Select(id => $"@{id}"));
        var read = string.Join(", ", keyColumns.Zip(ids, (column, id) => $"{column} AS {id}")) + ", revision AS Revision, document AS Document";
        var columns = $"{read}, updated_at AS UpdatedAt";
        var ofKey = string.Join(" AND ", keyColumns.Zip(ids, (column, id) => $"{column} = @{id}").Prepend("kitchen_id = @kitchenId"));
        var one = $"{ofKey} AND deleted_at IS NULL";
        var ofKitchen = "kitchen_id = @kitchenId AND deleted_at IS NULL";

        Create = $"""
            INSERT INTO {table} (kitchen_id, {key}, revision, document, updated_at, deleted_at)
            VALUES (@kitchenId, {keyValues}, 1, @document, @Now, NULL)
            ON CONFLICT (kitchen_id, {key}) DO UPDATE SET
                revision = {table}.revision + 1, document = excluded.document, updated_at = excluded.updated_at, deleted_at = NULL
            WHERE {table}.deleted_at IS NOT NULL
            RETURNING {columns}
            """;
        Replace = $"""
            UPDATE {table} SET revision = revision + 1, document = @document, updated_at = @Now
            WHERE {one} AND revision = @expectedRevision
            RETURNING {columns}
            """;
        Delete = $"""
            UPDATE {table} SET deleted_at = @Now
            WHERE {one} AND revision = @expectedRevision
            RETURNING {columns}
            """;
        Get = $"SELECT {columns} FROM {table} WHERE {one}";
        CurrentRevision = $"SELECT revision FROM {table} WHERE {one}";
        All = $"SELECT {columns} FROM {table} WHERE {ofKitchen} ORDER BY {key}";
        FirstPage = $"SELECT {columns} FROM {table} WHERE {ofKitchen} ORDER BY {key} LIMIT @limit";
        NextPage = $"SELECT {columns} FROM {table} WHERE {ofKitchen} AND ({key}) > ({keyValues}) ORDER BY {key} LIMIT @limit";
        AddRevision = $"""
            INSERT INTO {revisions} (kitchen_id, {key}, revision, document, created_at)
            VALUES (@kitchenId, {keyValues}, @Revision, @Document, @Now)
            """;
        ListRevisions = $"""
            SELECT {read}, created_at AS UpdatedAt FROM {revisions}
            WHERE {ofKey} AND revision > @after
            ORDER BY revision LIMIT @limit
            """;
        RaiseKitchen = $"UPDATE kitchens SET {kitchenRevision} = {kitchenRevision} + 1 WHERE id = @kitchenId";
    }

    /// <summary>Writes over a tombstone, whose numbering goes on; gives no row if there is a number.</summary>
    public string Create { get; }

    public string Replace { get; }

    public string Delete { get; }

    public string Get { get; }

    /// <summary>0 when there is none.</summary>
    public string CurrentRevision { get; }

    public string All { get; }

    public string FirstPage { get; }

    public string NextPage { get; }

    public string AddRevision { get; }

    public string ListRevisions { get; }

    public string RaiseKitchen { get; }

    // What the key's columns are called in parameters and rows, whatever the table calls them.
    private static string[] Ids => [nameof(OwnNumberRow.First), nameof(OwnNumberRow.Second)];
}
