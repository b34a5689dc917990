using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Formulas;

public sealed class PostgresChangeTests(PostgresServer server) : ChangeTests(server), IClassFixture<PostgresServer>;
