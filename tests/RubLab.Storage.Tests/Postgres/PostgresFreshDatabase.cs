using RubLab.Storage.Tests.Contract;

namespace RubLab.Storage.Tests.Postgres;

public sealed class PostgresFreshDatabase : FreshDatabase
{
    private PostgresSchema? _schema;

    public override string? Missing => PostgresSchema.Missing;

    public override async Task<Database> OpenAsync()
    {
        _schema ??= await PostgresSchema.CreateAsync();
        return await Database.OpenAsync(_schema.ConnectionString, Clock);
    }

    public override Task ExecuteAsync(string sql) => _schema!.ExecuteAsync(sql);

    public override async ValueTask DisposeAsync()
    {
        if (_schema is not null)
        {
            await _schema.DisposeAsync();
        }
    }
}
