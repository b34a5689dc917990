using Npgsql;

namespace RubLab.Storage.Tests.Postgres;

/// <summary>An empty schema of its own on the server the tests are given; dropped with all that is in it.</summary>
public sealed class PostgresSchema : IAsyncDisposable
{
    private const string Variable = "RUBLAB_TEST_POSTGRES";

    private readonly string _name = "rublab_test_" + Guid.NewGuid().ToString("n");

    /// <summary>Why nothing can be tested on PostgreSQL here; null if it can.</summary>
    public static string? Missing { get; } = Server is null
        ? $"{Variable} is not set: it is the connection string (Host=...) of a PostgreSQL server where databases and schemas may be created."
        : null;

    /// <summary>What the server is told in <c>--data</c>: the schema alone is on its search path.</summary>
    public string ConnectionString => new NpgsqlConnectionStringBuilder(Server) { SearchPath = _name, ApplicationName = _name }.ConnectionString;

    private static string? Server => Environment.GetEnvironmentVariable(Variable) is { Length: > 0 } text ? text : null;

    public static async Task<PostgresSchema> CreateAsync()
    {
        var schema = new PostgresSchema();
        await schema.ExecuteAsync($"CREATE SCHEMA {schema._name}");
        return schema;
    }

    /// <summary>Runs SQL with the schema on the search path.</summary>
    public async Task ExecuteAsync(string sql)
    {
        await using var connection = new NpgsqlConnection(Unpooled());
        await connection.OpenAsync();
        await using var command = new NpgsqlCommand(sql, connection);
        await command.ExecuteNonQueryAsync();
    }

    /// <summary>The first value SQL gives.</summary>
    public async Task<object?> AskAsync(string sql)
    {
        await using var connection = new NpgsqlConnection(Unpooled());
        await connection.OpenAsync();
        await using var command = new NpgsqlCommand(sql, connection);
        return await command.ExecuteScalarAsync();
    }

    public async ValueTask DisposeAsync() => await ExecuteAsync($"DROP SCHEMA {_name} CASCADE");

    private string Unpooled() => new NpgsqlConnectionStringBuilder(ConnectionString) { Pooling = false }.ConnectionString;
}
