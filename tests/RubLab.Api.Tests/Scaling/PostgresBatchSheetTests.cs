using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Scaling;

public sealed class PostgresBatchSheetTests(PostgresServer server) : BatchSheetTests(server), IClassFixture<PostgresServer>;
