using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Fuzzing;

public sealed class PostgresFuzzTests(PostgresServer server) : FuzzTests(server), IClassFixture<PostgresServer>;
