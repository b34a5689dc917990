using RubLab.Storage.Tests.Contract;

namespace RubLab.Storage.Tests.Postgres.Contract;

public sealed class PostgresYieldTests : YieldContract<PostgresFreshDatabase>;
