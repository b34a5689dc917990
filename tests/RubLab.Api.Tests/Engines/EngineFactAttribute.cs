using Xunit.Sdk;

namespace RubLab.Api.Tests.Engines;

/// <summary>A fact that holds on every engine: the class runs on SQLite, the class derived from it on PostgreSQL, or is skipped.</summary>
[XunitTestCaseDiscoverer("RubLab.Api.Tests.Engines.EngineFactDiscoverer", "RubLab.Api.Tests")]
[AttributeUsage(AttributeTargets.Method)]
public sealed class EngineFactAttribute : FactAttribute;
