using RubLab.Storage.Refusals;

namespace RubLab.Storage.Engines;

/// <summary>Looks at a database before anything is written to it.</summary>
internal static class PostgresInspection
{
    /// <summary>What belongs to an extension is nobody's table.</summary>
    private const string Look = """
        SELECT current_setting('server_encoding') AS Encoding, current_schema()::text AS Schema, COUNT(tables.oid) AS Tables,
               COUNT(*) FILTER (WHERE tables.relname = 'rublab') AS Markers,
               COUNT(*) FILTER (WHERE tables.relname = 'schema_migrations') AS Ledgers
        FROM (
            SELECT class.oid, class.relname FROM pg_catalog.pg_class AS class
            WHERE class.relnamespace = to_regnamespace(quote_ident(current_schema())) AND class.relkind IN ('r', 'p', 'v', 'm', 'f')
              AND NOT EXISTS (SELECT 1 FROM pg_catalog.pg_depend AS part
                              WHERE part.classid = 'pg_catalog.pg_class'::regclass AND part.objid = class.oid AND part.deptype = 'e')
        ) AS tables
        """;

    /// <summary>The schema number of the database; 0 for one that is still empty.</summary>
    /// <exception cref="UnreadableDatabaseException">Another program's, or unable to hold every text.</exception>
    public static async Task<long> SchemaOfAsync(PostgresEngine engine, CancellationToken cancellation)
    {
        await using var session = await engine.BeginAsync(Intent.Read, cancellation);
        var seen = (await session.FirstAsync<PostgresSight>(Look, new { }, cancellation))!;
        if (seen.Encoding != "UTF8")
        {
            throw new UnreadableDatabaseException(engine.Location, $"its encoding is {seen.Encoding}; create it with ENCODING 'UTF8'.");
        }

        if (seen.Schema is null)
        {
            throw new UnreadableDatabaseException(engine.Location, "no schema on its search path exists.");
        }

        if (seen.Tables == 0)
        {
            return 0;
        }

        if (seen.Markers == 0)
        {
            throw new UnreadableDatabaseException(engine.Location, $"its schema {seen.Schema} holds the tables of another program.");
        }

        return seen.Ledgers == 0
            ? throw new UnreadableDatabaseException(engine.Location, "its list of migrations is missing.")
            : await session.NumberAsync("SELECT MAX(number) FROM schema_migrations", null, cancellation);
    }
}
