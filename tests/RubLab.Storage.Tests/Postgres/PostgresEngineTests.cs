using Npgsql;
using RubLab.Storage.Engines;
using RubLab.Storage.Formulas;
using RubLab.Storage.Refusals;

namespace RubLab.Storage.Tests.Postgres;

public sealed class PostgresEngineTests
{
    private static readonly FormulaContent Rub = new("Rub", "rub", "{}");

    [RequiresPostgresFact]
    public async Task A_reader_sees_one_moment_and_cannot_write_even_past_the_stores()
    {
        await using var schema = await PostgresSchema.CreateAsync();
        using var engine = await OpenAsync(schema, Database.Patience);
        await schema.ExecuteAsync("INSERT INTO kitchens (id, name, created_at) VALUES ('quay', 'Before', '')");
        await using var reader = await engine.BeginAsync(Intent.Read, default);

        Assert.Equal(1, await reader.NumberAsync("SELECT COUNT(*) FROM kitchens", null, default));
        await schema.ExecuteAsync("INSERT INTO kitchens (id, name, created_at) VALUES ('lock', 'After', '')");

        Assert.Equal(1, await reader.NumberAsync("SELECT COUNT(*) FROM kitchens", null, default));
        await Assert.ThrowsAsync<UnreachableDatabaseException>(
            () => reader.NumberAsync("UPDATE kitchens SET last_change = 1 RETURNING last_change", null, default));
    }

    [RequiresPostgresFact]
    public async Task Writers_of_different_kitchens_do_not_wait_for_each_other()
    {
        await using var schema = await PostgresSchema.CreateAsync();
        await using var database = await TwoKitchensAsync(schema);
        await using var holder = await database.BeginAsync(Intent.Write);
        await holder.Formulas.CreateAsync("quay", "rub-1", Rub);

        await using var other = await database.BeginAsync(Intent.Write);
        await other.Formulas.CreateAsync("lock", "rub-1", Rub);
        await other.CommitAsync();
        await holder.CommitAsync();

        Assert.Equal(2L, await schema.AskAsync("SELECT COUNT(*) FROM formulas"));
    }

    [RequiresPostgresFact]
    public async Task What_a_writer_reads_of_a_kitchen_stays_true_until_it_ends()
    {
        await using var schema = await PostgresSchema.CreateAsync();
        await using var database = await TwoKitchensAsync(schema);
        await using var first = await database.BeginAsync(Intent.Write);
        Assert.Null(await first.Replays.FindAsync("quay", "key-1"));

        var second = Task.Run(async () =>
        {
            await using var work = await database.BeginAsync(Intent.Write);
            return await work.Replays.FindAsync("quay", "key-1");
        });
        await Task.Delay(300);
        Assert.False(second.IsCompleted);
        await first.Replays.SaveAsync("quay", "key-1", "hash-1", new Replays.StoredAnswer(201, "", ""));
        await first.CommitAsync();

        Assert.Equal("hash-1", (await second)!.RequestHash);
    }

    [RequiresPostgresFact]
    public async Task A_writer_that_waits_too_long_for_a_kitchen_is_told_so_and_may_try_again()
    {
        await using var schema = await PostgresSchema.CreateAsync();
        await using var database = await TwoKitchensAsync(schema);
        using var engine = await OpenAsync(schema, TimeSpan.FromMilliseconds(200));
        await using (var holder = await database.BeginAsync(Intent.Write))
        {
            await holder.Kitchens.GetAsync("quay");
            await using var late = await engine.BeginAsync(Intent.Write, default);
            await Assert.ThrowsAsync<BusyDatabaseException>(() => late.HoldAsync("quay", default));
        }

        await using var again = await engine.BeginAsync(Intent.Write, default);
        await again.HoldAsync("quay", default);
        await again.CommitAsync(default);
    }

    [RequiresPostgresFact]
    public async Task Of_two_writers_that_wait_for_each_other_one_is_told_to_try_again()
    {
        await using var schema = await PostgresSchema.CreateAsync();
        await using var database = await TwoKitchensAsync(schema);
        await using var first = await database.BeginAsync(Intent.Write);
        await using var second = await database.BeginAsync(Intent.Write);
        await first.Kitchens.GetAsync("quay");
        await second.Kitchens.GetAsync("lock");

        var both = Task.WhenAll(
            EndAsync(first, work => work.Formulas.CreateAsync("lock", "rub-1", Rub)),
            EndAsync(second, work => work.Formulas.CreateAsync("quay", "rub-1", Rub)));

        var refusal = Assert.Single(await both, fault => fault is not null);
        Assert.Contains("waiting for each other", Assert.IsType<BusyDatabaseException>(refusal).Message, StringComparison.Ordinal);
        Assert.Equal(1L, await schema.AskAsync("SELECT COUNT(*) FROM formulas"));
    }

    [RequiresPostgresFact]
    public async Task Readers_find_a_connection_while_more_writers_wait_than_the_pool_has_connections()
    {
        await using var schema = await PostgresSchema.CreateAsync();
        await using var database = await TwoKitchensAsync(schema);
        await using var holder = await database.BeginAsync(Intent.Write);
        await holder.Kitchens.GetAsync("quay");
        var writers = Enumerable.Range(0, 40).Select(i => Task.Run(async () =>
        {
            await using var work = await database.BeginAsync(Intent.Write);
            await work.Formulas.CreateAsync("quay", $"rub-{i}", Rub);
            await work.CommitAsync();
        })).ToList();
        await Task.Delay(300);

        await using (var reader = await database.BeginAsync(Intent.Read).WaitAsync(TimeSpan.FromSeconds(10)))
        {
            Assert.NotNull(await reader.Kitchens.GetAsync("quay"));
        }

        await holder.CommitAsync();
        await holder.DisposeAsync();
        await Task.WhenAll(writers);
        Assert.Equal(40L, await schema.AskAsync("SELECT last_change FROM kitchens WHERE id = 'quay'"));
    }

    [RequiresPostgresFact]
    public async Task Connections_that_died_while_idle_are_replaced_unnoticed()
    {
        await using var schema = await PostgresSchema.CreateAsync();
        await using var database = await TwoKitchensAsync(schema);
        await EndIdleAsync(schema);

        foreach (var intent in (Intent[])[Intent.Read, Intent.Write, Intent.Read])
        {
            await using var work = await database.BeginAsync(intent);
            Assert.NotNull(await work.Kitchens.GetAsync("quay"));
        }
    }

    [RequiresPostgresFact]
    public async Task A_connection_that_dies_in_a_unit_is_a_refusal_and_nothing_is_kept()
    {
        await using var schema = await PostgresSchema.CreateAsync();
        await using var database = await TwoKitchensAsync(schema);
        await using (var work = await database.BeginAsync(Intent.Write))
        {
            await work.Formulas.CreateAsync("quay", "rub-1", Rub);
            await EndIdleAsync(schema);
            await Assert.ThrowsAsync<UnreachableDatabaseException>(() => work.CommitAsync());
        }

        await using var again = await database.BeginAsync(Intent.Write);
        Assert.True((await again.Formulas.CreateAsync("quay", "rub-1", Rub)).IsWritten);
        Assert.Equal(1, (await again.Kitchens.GetAsync("quay"))!.LastChange);
    }

    [RequiresPostgresFact]
    public async Task A_page_of_formulas_is_read_from_the_index_without_sorting()
    {
        await using var schema = await PostgresSchema.CreateAsync();
        using var engine = await OpenAsync(schema, Database.Patience);
        await schema.ExecuteAsync("""
            INSERT INTO kitchens (id, name, created_at) VALUES ('quay', 'Quay', '');
            INSERT INTO formulas (kitchen_id, id, revision, name, name_key, kind, document, created_at, updated_at)
            SELECT 'quay', 'id-' || i, 1, 'n', 'n' || i, 'rub', '', '', '' FROM generate_series(1, 5000) AS i;
            ANALYZE formulas;
            """);

        foreach (var ofKind in new[] { false, true })
        {
            var sql = FormulaSql.List(ofKind, afterPosition: true)
                .Replace("@kitchenId", "'quay'", StringComparison.Ordinal).Replace("@kind", "'rub'", StringComparison.Ordinal)
                .Replace("@nameKey", "'n3'", StringComparison.Ordinal).Replace("@id", "'id-3'", StringComparison.Ordinal)
                .Replace("@limit", "10", StringComparison.Ordinal);
            var plan = (string)(await schema.AskAsync($"EXPLAIN (FORMAT JSON) {sql}"))!;

            Assert.Contains("\"Node Type\": \"Index Scan\"", plan, StringComparison.Ordinal);
            Assert.DoesNotContain("Sort", plan, StringComparison.Ordinal);
        }
    }

    private static async Task<Exception?> EndAsync(UnitOfWork work, Func<UnitOfWork, Task> write)
    {
        var fault = await Record.ExceptionAsync(() => write(work));
        if (fault is null)
        {
            await work.CommitAsync();
        }
        else
        {
            await work.DisposeAsync();
        }

        return fault;
    }

    /// <summary>Ends the connections of one schema's users, as a restart of the server does.</summary>
    private static async Task EndIdleAsync(PostgresSchema schema)
    {
        var mark = new NpgsqlConnectionStringBuilder(schema.ConnectionString).ApplicationName!;
        await schema.AskAsync($"SELECT COUNT(pg_terminate_backend(pid)) FROM pg_stat_activity WHERE application_name = '{mark}' AND pid <> pg_backend_pid()");
        await Task.Delay(200);
    }

    private static async Task<Database> TwoKitchensAsync(PostgresSchema schema)
    {
        var database = await Database.OpenAsync(schema.ConnectionString, TimeProvider.System);
        await using var work = await database.BeginAsync(Intent.Write);
        await work.Kitchens.EnsureAsync("quay", "Quay kitchen");
        await work.Kitchens.EnsureAsync("lock", "Lock kitchen");
        await work.CommitAsync();
        return database;
    }

    private static Task<PostgresEngine> OpenAsync(PostgresSchema schema, TimeSpan patience)
    {
        Assert.True(PostgresLocation.TryRead(schema.ConnectionString, out var location));
        return PostgresOpening.OpenAsync(location, TimeProvider.System, patience, default);
    }
}
