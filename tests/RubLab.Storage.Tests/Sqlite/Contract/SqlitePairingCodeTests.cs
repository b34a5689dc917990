using RubLab.Storage.Tests.Contract;

namespace RubLab.Storage.Tests.Sqlite.Contract;

public sealed class SqlitePairingCodeTests : PairingCodeContract<SqliteFreshDatabase>;
