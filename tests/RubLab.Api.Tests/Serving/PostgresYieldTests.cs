using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Serving;

public sealed class PostgresYieldTests(PostgresServer server) : YieldTests(server), IClassFixture<PostgresServer>;
