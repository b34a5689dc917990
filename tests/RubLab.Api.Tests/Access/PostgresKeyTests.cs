using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Access;

public sealed class PostgresKeyTests(PostgresServer server) : KeyTests(server), IClassFixture<PostgresServer>;
