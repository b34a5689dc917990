namespace RubLab.Storage.Tests.Postgres;

/// <summary>Skipped, with the reason, where there is no PostgreSQL server to test on.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class RequiresPostgresFactAttribute : FactAttribute
{
    public RequiresPostgresFactAttribute() => Skip = PostgresSchema.Missing;
}
