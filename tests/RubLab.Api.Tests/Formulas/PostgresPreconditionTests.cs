using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Formulas;

public sealed class PostgresPreconditionTests(PostgresServer server) : PreconditionTests(server), IClassFixture<PostgresServer>;
