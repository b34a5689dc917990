using Dapper;
using Microsoft.Data.Sqlite;
using RubLab.Storage.Engines;
using RubLab.Storage.Refusals;

namespace RubLab.Storage.Tests.Sqlite;

public sealed class SqliteEngineTests : IDisposable
{
    private readonly TemporaryDirectory _directory = new();

    private string FilePath => _directory.At("rublab.db");

    public void Dispose() => _directory.Dispose();

    [Theory]
    [InlineData("journal_mode", "wal")]
    [InlineData("synchronous", "2")]
    [InlineData("foreign_keys", "1")]
    [InlineData("trusted_schema", "0")]
    [InlineData("busy_timeout", "15000")]
    public async Task Every_connection_has_the_pragmas_promised(string pragma, string expected)
    {
        using var engine = await OpenAsync(Database.Patience);
        await using var first = await engine.ConnectAsync(default);
        await using var second = await engine.ConnectAsync(default);

        Assert.Equal(expected, first.ExecuteScalar<string>($"PRAGMA {pragma}"));
        Assert.Equal(expected, second.ExecuteScalar<string>($"PRAGMA {pragma}"));
    }

    [Fact]
    public async Task Pragmas_are_set_once_for_a_physical_connection()
    {
        using var engine = await OpenAsync(Database.Patience);
        SQLitePCL.sqlite3 handle;
        await using (var connection = await engine.ConnectAsync(default))
        {
            handle = connection.Handle!;
            connection.Execute("PRAGMA synchronous = OFF");
        }

        await using var again = await engine.ConnectAsync(default);

        Assert.Same(handle, again.Handle);
        Assert.Equal("0", again.ExecuteScalar<string>("PRAGMA synchronous"));
    }

    [Fact]
    public async Task Every_table_is_strict()
    {
        using var engine = await OpenAsync(Database.Patience);
        await using var connection = await engine.ConnectAsync(default);

        var loose = connection.Query<string>(
            "SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND strict = 0 AND name NOT LIKE 'sqlite%'");

        Assert.Empty(loose);
    }

    [Fact]
    public async Task Neither_a_plain_key_nor_a_part_of_it_is_in_the_file()
    {
        string plainKey;
        await using (var database = await Database.OpenAsync(FilePath, TimeProvider.System))
        {
            await using var work = await database.BeginAsync(Intent.Write);
            await work.Kitchens.EnsureAsync("quay", "Quay kitchen");
            plainKey = (await work.Keys.IssueAsync("quay", "Till", ["all"])).PlainKey;
            await work.CommitAsync();
        }

        var bytes = await File.ReadAllTextAsync(FilePath, System.Text.Encoding.Latin1);

        Assert.Contains("Till", bytes, StringComparison.Ordinal);
        Assert.DoesNotContain(plainKey[5..15], bytes, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_page_of_formulas_is_read_from_the_index_without_sorting()
    {
        using var engine = await OpenAsync(Database.Patience);
        await using var connection = await engine.ConnectAsync(default);

        foreach (var ofKind in new[] { false, true })
        {
            var sql = "EXPLAIN QUERY PLAN " + RubLab.Storage.Formulas.FormulaSql.List(ofKind, afterPosition: true);
            var plan = connection.Query(sql, new { kitchenId = "quay", kind = "rub", nameKey = "m", id = "1", limit = 10 })
                .Select(row => (string)row.detail)
                .ToList();

            var step = Assert.Single(plan);
            Assert.StartsWith($"SEARCH formulas USING INDEX {(ofKind ? "formulas_by_kind" : "formulas_by_name")}", step, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_writer_that_waits_too_long_for_its_own_process_is_told_the_database_is_busy()
    {
        using var engine = await OpenAsync(TimeSpan.FromMilliseconds(200));
        await using var holder = await engine.BeginAsync(Intent.Write, default);

        await Assert.ThrowsAsync<BusyDatabaseException>(() => engine.BeginAsync(Intent.Write, default));
    }

    [Fact]
    public async Task A_writer_that_waits_too_long_for_another_process_is_told_so_and_may_try_again()
    {
        using var engine = await OpenAsync(TimeSpan.FromMilliseconds(200));
        using (var other = await OpenAsync(TimeSpan.FromMilliseconds(200)))
        {
            await using var holder = await other.BeginAsync(Intent.Write, default);
            var refusal = await Assert.ThrowsAsync<BusyDatabaseException>(() => engine.BeginAsync(Intent.Write, default));
            Assert.IsType<SqliteException>(refusal.InnerException);
        }

        await using var work = await engine.BeginAsync(Intent.Write, default);
        await work.CommitAsync(default);
    }

    [Fact]
    public async Task A_writer_that_is_cancelled_while_it_waits_leaves_its_place()
    {
        using var engine = await OpenAsync(Database.Patience);
        using var cancel = new CancellationTokenSource(TimeSpan.FromMilliseconds(100));
        await using (await engine.BeginAsync(Intent.Write, default))
        {
            await Assert.ThrowsAnyAsync<OperationCanceledException>(() => engine.BeginAsync(Intent.Write, cancel.Token));
        }

        await using var work = await engine.BeginAsync(Intent.Write, default);
        await work.CommitAsync(default);
    }

    private Task<SqliteEngine> OpenAsync(TimeSpan patience) => SqliteOpening.OpenAsync(FilePath, TimeProvider.System, patience, default);
}
