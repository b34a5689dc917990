using Xunit.Abstractions;
using Xunit.Sdk;

namespace RubLab.Api.Tests.Engines;

public sealed class EngineFactDiscoverer(IMessageSink sink) : FactDiscoverer(sink)
{
    public override IEnumerable<IXunitTestCase> Discover(
        ITestFrameworkDiscoveryOptions discoveryOptions, ITestMethod testMethod, IAttributeInfo factAttribute) =>
        MissingEngineTestCase.IsFor(testMethod)
            ? [new MissingEngineTestCase(DiagnosticMessageSink, discoveryOptions.MethodDisplayOrDefault(), discoveryOptions.MethodDisplayOptionsOrDefault(), testMethod)]
            : base.Discover(discoveryOptions, testMethod, factAttribute);
}
