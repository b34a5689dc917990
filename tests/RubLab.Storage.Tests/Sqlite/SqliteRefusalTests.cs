using RubLab.Storage.Refusals;

namespace RubLab.Storage.Tests.Sqlite;

public sealed class SqliteRefusalTests : IDisposable
{
    private const string NewerSchema = "INSERT INTO schema_migrations (number, name, applied_at) VALUES (9001, 'from-the-future', '')";

    private readonly TemporaryDirectory _directory = new();

    private string FilePath => _directory.At("rublab.db");

    public void Dispose() => _directory.Dispose();

    [Fact]
    public async Task A_database_of_a_newer_version_is_refused_with_both_numbers_and_left_as_it_is()
    {
        await SqliteFile.WriteAsync(FilePath);
        await SqliteFile.ExecuteAsync(FilePath, NewerSchema);

        var refusal = await RefusedUnchangedAsync<NewerDatabaseException>(FilePath);

        Assert.Equal(9001, refusal.Found);
        Assert.Equal(4, refusal.Known);
        Assert.Contains("schema 9001", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("up to 4:", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_newer_schema_still_in_the_log_of_a_crashed_server_is_refused_and_the_log_kept()
    {
        var crashed = _directory.At("crashed.db");
        await using (var database = await Database.OpenAsync(FilePath, TimeProvider.System))
        {
            await SqliteFile.FillAsync(database);
            await SqliteFile.ExecuteAsync(FilePath, NewerSchema);
            File.Copy(FilePath, crashed);
            File.Copy(FilePath + "-wal", crashed + "-wal");
        }

        var log = await File.ReadAllBytesAsync(crashed + "-wal");
        await RefusedUnchangedAsync<NewerDatabaseException>(crashed);

        Assert.NotEmpty(log);
        Assert.Equal(log, await File.ReadAllBytesAsync(crashed + "-wal"));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(15)]
    [InlineData(100)]
    [InlineData(5000)]
    [InlineData(100_000)]
    public async Task A_file_of_garbage_is_refused_and_left_as_it_is(int length)
    {
        var garbage = new byte[length];
        new Random(20260314).NextBytes(garbage);
        await File.WriteAllBytesAsync(FilePath, garbage);

        var refusal = await RefusedUnchangedAsync<UnreadableDatabaseException>(FilePath);

        Assert.Contains(FilePath, refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_text_file_is_refused_and_left_as_it_is()
    {
        await File.WriteAllTextAsync(FilePath, "Salt 2 parts, pepper 3 parts.\n");

        await RefusedUnchangedAsync<UnreadableDatabaseException>(FilePath);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(100)]
    [InlineData(4096)]
    [InlineData(20_000)]
    [InlineData(-1)]
    [InlineData(-4096)]
    public async Task A_truncated_database_is_refused_and_left_as_it_is(int length)
    {
        await SqliteFile.WriteAsync(FilePath);
        await using (var file = File.Open(FilePath, FileMode.Open))
        {
            file.SetLength(length > 0 ? length : file.Length + length);
        }

        await RefusedUnchangedAsync<UnreadableDatabaseException>(FilePath);
    }

    [Fact]
    public async Task A_database_with_overwritten_pages_is_refused_and_left_as_it_is()
    {
        await SqliteFile.WriteAsync(FilePath);
        await using (var file = File.Open(FilePath, FileMode.Open))
        {
            file.Position = 4096 * 5;
            await file.WriteAsync(Enumerable.Repeat((byte)0xA5, 4096 * 4).ToArray());
        }

        await RefusedUnchangedAsync<UnreadableDatabaseException>(FilePath);
    }

    [Fact]
    public async Task The_database_of_another_program_is_refused_and_left_as_it_is()
    {
        await SqliteFile.ExecuteAsync(FilePath, "CREATE TABLE invoices (id INTEGER PRIMARY KEY); INSERT INTO invoices DEFAULT VALUES;");

        var refusal = await RefusedUnchangedAsync<UnreadableDatabaseException>(FilePath);

        Assert.Contains("another program", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_directory_that_cannot_be_made_is_named_in_the_refusal()
    {
        var file = _directory.At("a file");
        await File.WriteAllTextAsync(file, "not a directory");
        var below = Path.Combine(file, "data", "rublab.db");

        var refusal = await Assert.ThrowsAsync<UnreachableDatabaseException>(() => Database.OpenAsync(below, TimeProvider.System));

        Assert.Equal(below, refusal.Location);
        Assert.Contains(below, refusal.Message, StringComparison.Ordinal);
        Assert.Equal("not a directory", await File.ReadAllTextAsync(file));
    }

    [Fact]
    public async Task A_directory_in_place_of_the_file_is_refused()
    {
        Directory.CreateDirectory(FilePath);

        var refusal = await Assert.ThrowsAsync<UnreachableDatabaseException>(() => Database.OpenAsync(FilePath, TimeProvider.System));

        Assert.Equal(FilePath, refusal.Location);
    }

    [Fact]
    public async Task A_path_no_file_system_takes_is_refused()
    {
        await Assert.ThrowsAsync<UnreachableDatabaseException>(() => Database.OpenAsync(_directory.At("a\0b"), TimeProvider.System));
        await Assert.ThrowsAsync<UnreachableDatabaseException>(
            () => Database.OpenAsync(_directory.At(new string('n', 5000), "rublab.db"), TimeProvider.System));
    }

    private static async Task<T> RefusedUnchangedAsync<T>(string path)
        where T : StorageException
    {
        var before = await File.ReadAllBytesAsync(path);
        var refusal = await Assert.ThrowsAsync<T>(() => Database.OpenAsync(path, TimeProvider.System));
        Assert.Equal(before, await File.ReadAllBytesAsync(path));
        Assert.Equal(path, refusal.Location);
        return refusal;
    }
}
