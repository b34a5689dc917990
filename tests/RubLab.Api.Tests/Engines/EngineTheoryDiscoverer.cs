using Xunit.Abstractions;
using Xunit.Sdk;

namespace RubLab.Api.Tests.Engines;

public sealed class EngineTheoryDiscoverer(IMessageSink sink) : TheoryDiscoverer(sink)
{
    public override IEnumerable<IXunitTestCase> Discover(
        ITestFrameworkDiscoveryOptions discoveryOptions, ITestMethod testMethod, IAttributeInfo theoryAttribute) =>
        MissingEngineTestCase.IsFor(testMethod)
            ? [new MissingEngineTestCase(DiagnosticMessageSink, discoveryOptions.MethodDisplayOrDefault(), discoveryOptions.MethodDisplayOptionsOrDefault(), testMethod)]
            : base.Discover(discoveryOptions, testMethod, theoryAttribute);
}
