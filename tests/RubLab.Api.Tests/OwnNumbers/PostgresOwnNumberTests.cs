using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.OwnNumbers;

public sealed class PostgresOwnNumberTests(PostgresServer server) : OwnNumberTests(server), IClassFixture<PostgresServer>;
