using Xunit.Abstractions;
using Xunit.Sdk;

namespace RubLab.Storage.Tests.Contract;

public sealed class ContractFactDiscoverer(IMessageSink sink) : FactDiscoverer(sink)
{
    protected override IXunitTestCase CreateTestCase(
        ITestFrameworkDiscoveryOptions discoveryOptions, ITestMethod testMethod, IAttributeInfo factAttribute) =>
        new ContractTestCase(DiagnosticMessageSink, discoveryOptions.MethodDisplayOrDefault(), discoveryOptions.MethodDisplayOptionsOrDefault(), testMethod);
}
