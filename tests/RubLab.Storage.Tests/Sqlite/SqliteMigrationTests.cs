using Dapper;
using Microsoft.Data.Sqlite;
using RubLab.Storage.Engines;
using RubLab.Storage.Migrations;
using RubLab.Storage.Refusals;

namespace RubLab.Storage.Tests.Sqlite;

public sealed class SqliteMigrationTests : IDisposable
{
    private static readonly IReadOnlyList<Migration> Known = Migration.ReadAll(SqliteEngine.Folder);

    private readonly TemporaryDirectory _directory = new();
    private readonly SqliteEngine _engine;

    public SqliteMigrationTests()
    {
        _engine = new SqliteEngine(_directory.At("rublab.db"), new ManualClock(), Database.Patience);
    }

    public void Dispose()
    {
        _engine.Dispose();
        _directory.Dispose();
    }

    [Fact]
    public void The_scripts_are_numbered_from_the_ledger_up()
    {
        Assert.Equal(Enumerable.Range(0, Known.Count).Select(number => (long)number), Known.Select(migration => migration.Number));
        Assert.Equal("ledger", Known[0].Name);
    }

    [Fact]
    public async Task Steps_are_noted_with_number_name_and_time()
    {
        await Migrator.ApplyAsync(_engine, Known, default);

        Assert.Equal(
            ["1 kitchens-keys-formulas 2026-03-14T09:26:53.0000000Z", "2 densities 2026-03-14T09:26:53.0000000Z", "3 pairing 2026-03-14T09:26:53.0000000Z", "4 yields 2026-03-14T09:26:53.0000000Z"], await LedgerAsync());
    }

    [Fact]
    public async Task A_later_step_is_applied_to_an_older_database_and_keeps_its_data()
    {
        await Migrator.ApplyAsync(_engine, Known, default);
        await using (var session = await _engine.BeginAsync(Intent.Write, default))
        {
            await session.WriteAsync("INSERT INTO kitchens (id, name, created_at) VALUES ('quay', 'Quay', '')", null, default);
            await session.CommitAsync(default);
        }

        await Migrator.ApplyAsync(_engine, [.. Known, Next("ALTER TABLE kitchens ADD COLUMN motto TEXT NOT NULL DEFAULT 'salt'")], default);

        await using var connection = await _engine.ConnectAsync(default);
        Assert.Equal("Quay: salt", connection.ExecuteScalar<string>("SELECT name || ': ' || motto FROM kitchens"));
        Assert.Equal(Known.Count, (await LedgerAsync()).Count);
    }

    [Fact]
    public async Task A_step_that_fails_leaves_nothing_of_itself_and_all_before_it()
    {
        var broken = Next("CREATE TABLE half (id TEXT NOT NULL) STRICT; INSERT INTO nowhere VALUES (1);");

        await Assert.ThrowsAsync<SqliteException>(() => Migrator.ApplyAsync(_engine, [.. Known, broken], default));

        await using var connection = await _engine.ConnectAsync(default);
        Assert.Equal(0, connection.ExecuteScalar<long>("SELECT COUNT(*) FROM sqlite_schema WHERE name = 'half'"));
        Assert.Equal(Known.Count - 1, (await LedgerAsync()).Count);
    }

    [Fact]
    public async Task A_database_migrated_further_while_this_one_waited_is_refused()
    {
        await Migrator.ApplyAsync(_engine, [.. Known, Next("SELECT 1")], default);

        var refusal = await Assert.ThrowsAsync<NewerDatabaseException>(() => Migrator.ApplyAsync(_engine, Known, default));

        Assert.Equal(refusal.Known + 1, refusal.Found);
    }

    private static Migration Next(string sql) => new(Known[^1].Number + 1, "next", sql);

    private async Task<List<string>> LedgerAsync()
    {
        await using var connection = await _engine.ConnectAsync(default);
        return [.. connection.Query<string>("SELECT number || ' ' || name || ' ' || applied_at FROM schema_migrations ORDER BY number")];
    }
}
