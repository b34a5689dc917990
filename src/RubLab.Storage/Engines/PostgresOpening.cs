using RubLab.Storage.Migrations;
using RubLab.Storage.Refusals;

namespace RubLab.Storage.Engines;

/// <summary>From a connection string to an engine at the newest schema, or to the reason why not.</summary>
internal static class PostgresOpening
{
    public static async Task<PostgresEngine> OpenAsync(
        PostgresLocation location, TimeProvider clock, TimeSpan patience, CancellationToken cancellation)
    {
        var engine = new PostgresEngine(location, clock, patience);
        try
        {
            var migrations = Migration.ReadAll(PostgresEngine.Folder);
            var newest = migrations[^1].Number;
            var schema = await PostgresInspection.SchemaOfAsync(engine, cancellation);
            if (schema > newest)
            {
                throw new NewerDatabaseException(engine.Location, schema, newest);
            }

            if (schema < newest)
            {
                await Migrator.ApplyAsync(engine, migrations, cancellation);
            }

            return engine;
        }
        catch
        {
            engine.Dispose();
            throw;
        }
    }
}
