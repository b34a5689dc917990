using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Fuzzing;

public sealed class PostgresPairingFuzzTests(PostgresServer server) : PairingFuzzTests(server), IClassFixture<PostgresServer>;
