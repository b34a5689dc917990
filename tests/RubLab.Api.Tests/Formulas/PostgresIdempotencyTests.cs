using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Formulas;

public sealed class PostgresIdempotencyTests(PostgresServer server) : IdempotencyTests(server), IClassFixture<PostgresServer>;
