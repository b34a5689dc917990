using RubLab.Api.Tests.Hosting;
using RubLab.Storage.Tests.Postgres;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace RubLab.Api.Tests.Engines;

/// <summary>A test skipped with the reason why PostgreSQL is not there; an attribute alone cannot see which class inherited it.</summary>
public sealed class MissingEngineTestCase : XunitTestCase
{
    [Obsolete("For deserialization by xunit.")]
    public MissingEngineTestCase()
    {
    }

    public MissingEngineTestCase(IMessageSink sink, TestMethodDisplay display, TestMethodDisplayOptions options, ITestMethod method)
        : base(sink, display, options, method)
    {
    }

    public static bool IsFor(ITestMethod method) =>
        PostgresSchema.Missing is not null && method.TestClass.Class.ToRuntimeType().IsAssignableTo(typeof(IClassFixture<PostgresServer>));

    protected override string? GetSkipReason(IAttributeInfo factAttribute) => PostgresSchema.Missing;
}
