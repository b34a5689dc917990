using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Pairing;

public sealed class PostgresPairingTests(PostgresServer server) : PairingTests(server), IClassFixture<PostgresServer>;
