using RubLab.Storage.Engines;
using RubLab.Storage.Refusals;

namespace RubLab.Storage.Migrations;

/// <summary>Brings a database up to the newest schema, one transaction a step.</summary>
internal static class Migrator
{
    /// <summary>Applies what is missing; a step that fails leaves nothing of itself.</summary>
    /// <param name="engine">Where.</param>
    /// <param name="migrations">The ledger, then every step.</param>
    /// <param name="cancellation">Stops between two steps.</param>
    /// <exception cref="NewerDatabaseException">The database is past the last step.</exception>
    public static async Task ApplyAsync(Engine engine, IReadOnlyList<Migration> migrations, CancellationToken cancellation)
    {
        while (await ApplyNextAsync(engine, migrations, cancellation))
        {
        }
    }

    private static async Task<bool> ApplyNextAsync(Engine engine, IReadOnlyList<Migration> migrations, CancellationToken cancellation)
    {
        // The number is read under the lock: another process may have migrated while this one waited.
        await using var session = await engine.BeginMigrationAsync(cancellation);
        await session.WriteAsync(migrations[0].Sql, null, cancellation);
        var applied = await session.NumberAsync("SELECT MAX(number) FROM schema_migrations", null, cancellation);
        var newest = migrations[^1].Number;
        if (applied > newest)
        {
            throw new NewerDatabaseException(engine.Location, applied, newest);
        }

        if (applied == newest)
        {
            return false;
        }

        var next = migrations[(int)applied + 1];
        await session.WriteAsync(next.Sql, null, cancellation);
        await session.WriteAsync(
            "INSERT INTO schema_migrations (number, name, applied_at) VALUES (@Number, @Name, @Now)",
            new { next.Number, next.Name, session.Now },
            cancellation);
        await session.CommitAsync(cancellation);
        return true;
    }
}
