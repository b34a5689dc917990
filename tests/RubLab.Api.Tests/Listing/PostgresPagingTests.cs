using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Listing;

public sealed class PostgresPagingTests(PostgresServer server) : PagingTests(server), IClassFixture<PostgresServer>;
