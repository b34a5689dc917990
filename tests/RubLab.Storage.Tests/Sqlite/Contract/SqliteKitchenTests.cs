using RubLab.Storage.Tests.Contract;

namespace RubLab.Storage.Tests.Sqlite.Contract;

public sealed class SqliteKitchenTests : KitchenContract<SqliteFreshDatabase>;
