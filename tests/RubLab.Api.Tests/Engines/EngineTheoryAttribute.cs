using Xunit.Sdk;

namespace RubLab.Api.Tests.Engines;

/// <summary>Like <see cref="EngineFactAttribute"/>, for several cases.</summary>
[XunitTestCaseDiscoverer("RubLab.Api.Tests.Engines.EngineTheoryDiscoverer", "RubLab.Api.Tests")]
[AttributeUsage(AttributeTargets.Method)]
public sealed class EngineTheoryAttribute : TheoryAttribute;
