using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Formulas;

public sealed class PostgresFormulaTests(PostgresServer server) : FormulaTests(server), IClassFixture<PostgresServer>;
