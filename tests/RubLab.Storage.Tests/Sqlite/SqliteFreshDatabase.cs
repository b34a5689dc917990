using Dapper;
using Microsoft.Data.Sqlite;
using RubLab.Storage.Tests.Contract;

namespace RubLab.Storage.Tests.Sqlite;

public sealed class SqliteFreshDatabase : FreshDatabase
{
    private TemporaryDirectory? _directory;

    private string Path => (_directory ??= new TemporaryDirectory()).At("rublab.db");

    public override Task<Database> OpenAsync() => Database.OpenAsync(Path, Clock);

    public override async Task ExecuteAsync(string sql)
    {
        await using var connection = new SqliteConnection($"Data Source={Path};Pooling=False");
        await connection.ExecuteAsync(sql);
    }

    public override ValueTask DisposeAsync()
    {
        _directory?.Dispose();
        return ValueTask.CompletedTask;
    }
}
