using RubLab.Storage.Tests.Contract;

namespace RubLab.Storage.Tests.Postgres.Contract;

public sealed class PostgresPairingCodeTests : PairingCodeContract<PostgresFreshDatabase>;
