using RubLab.Storage.Tests.Postgres;

namespace RubLab.Api.Tests.Hosting;

/// <summary>A server whose store is on PostgreSQL. Where there is none it exists, as skipped tests want, but does not run.</summary>
public sealed class PostgresServer : Server
{
    private PostgresSchema? _schema;

    protected override string Data => _schema!.ConnectionString;

    public override async Task InitializeAsync()
    {
        if (PostgresSchema.Missing is null)
        {
            _schema = await PostgresSchema.CreateAsync();
        }
    }

    public override async Task DisposeAsync()
    {
        await base.DisposeAsync();
        if (_schema is not null)
        {
            await _schema.DisposeAsync();
        }
    }
}
