using Microsoft.Data.Sqlite;
using RubLab.Api.Tests.Hosting;
using RubLab.Storage;

namespace RubLab.Api.Tests.Starting;

public sealed class RefusedDataTests : IDisposable
{
    private readonly TemporaryDirectory _directory = new();

    private string Data => _directory.At("rublab.db");

    public void Dispose() => _directory.Dispose();

    [Fact]
    public async Task A_file_of_a_newer_version_is_refused_and_not_a_byte_of_it_changed()
    {
        await using (await Database.OpenAsync(Data, TimeProvider.System))
        {
        }

        await using (var connection = new SqliteConnection($"Data Source={Data};Pooling=False"))
        {
            await connection.OpenAsync();
            await using var command = connection.CreateCommand();
            command.CommandText = "INSERT INTO schema_migrations (number, name, applied_at) VALUES (9001, 'from-the-future', '')";
            await command.ExecuteNonQueryAsync();
        }

        await RefusedUnchangedAsync("has schema 9001");
    }

    [Fact]
    public async Task A_file_of_garbage_is_refused_and_not_a_byte_of_it_changed()
    {
        var garbage = new byte[20_000];
        new Random(20260314).NextBytes(garbage);
        await File.WriteAllBytesAsync(Data, garbage);

        await RefusedUnchangedAsync("it is not a SQLite database");
    }

    [Fact]
    public async Task A_file_of_text_is_refused_and_not_a_byte_of_it_changed()
    {
        await File.WriteAllTextAsync(Data, "Salt 2 parts, pepper 3 parts.\n");

        await RefusedUnchangedAsync("it is not a SQLite database");
    }

    [Fact]
    public async Task A_directory_in_place_of_the_file_is_refused()
    {
        Directory.CreateDirectory(Data);

        await using var server = await ServerProcess.RunAsync(null, "--data", Data, "--urls", "http://127.0.0.1:0");

        Assert.Equal(1, server.ExitCode);
        Assert.StartsWith($"RubLab cannot start: The database {Data} cannot be opened", server.Output.Trim(), StringComparison.Ordinal);
    }

    private async Task RefusedUnchangedAsync(string reason)
    {
        var before = await File.ReadAllBytesAsync(Data);

        foreach (var arguments in (string[][])[["--urls", "http://127.0.0.1:0"], ["--new-key", "till"]])
        {
            await using var server = await ServerProcess.RunAsync(null, ["--data", Data, .. arguments]);

            Assert.Equal(1, server.ExitCode);
            Assert.StartsWith("RubLab cannot start: ", server.Output.Trim(), StringComparison.Ordinal);
            Assert.Contains(Data, server.Output, StringComparison.Ordinal);
            Assert.Contains(reason, server.Output, StringComparison.Ordinal);
            Assert.DoesNotContain("   at ", server.Output, StringComparison.Ordinal);
        }

        Assert.Equal(before, await File.ReadAllBytesAsync(Data));
    }
}
