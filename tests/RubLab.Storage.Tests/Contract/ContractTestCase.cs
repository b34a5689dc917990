using Xunit.Abstractions;
using Xunit.Sdk;

namespace RubLab.Storage.Tests.Contract;

/// <summary>A plain attribute cannot see which engine's class inherited the fact; a test case can.</summary>
public sealed class ContractTestCase : XunitTestCase
{
    [Obsolete("For deserialization by xunit.")]
    public ContractTestCase()
    {
    }

    public ContractTestCase(IMessageSink sink, TestMethodDisplay display, TestMethodDisplayOptions options, ITestMethod method)
        : base(sink, display, options, method)
    {
    }

    protected override string? GetSkipReason(IAttributeInfo factAttribute)
    {
        var contract = TestMethod.TestClass.Class.ToRuntimeType();
        while (!contract.IsGenericType || contract.GetGenericTypeDefinition() != typeof(StoreContract<>))
        {
            contract = contract.BaseType!;
        }

        var engine = (FreshDatabase)Activator.CreateInstance(contract.GetGenericArguments()[0])!;
        return base.GetSkipReason(factAttribute) ?? engine.Missing;
    }
}
