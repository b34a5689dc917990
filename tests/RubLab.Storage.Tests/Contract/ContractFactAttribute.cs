using Xunit.Sdk;

namespace RubLab.Storage.Tests.Contract;

/// <summary>A fact each engine must fulfil; skipped, with the reason, where the engine is missing.</summary>
[XunitTestCaseDiscoverer("RubLab.Storage.Tests.Contract.ContractFactDiscoverer", "RubLab.Storage.Tests")]
[AttributeUsage(AttributeTargets.Method)]
public sealed class ContractFactAttribute : FactAttribute;
