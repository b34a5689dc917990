namespace RubLab.Page.Tests.Harness;

/// <summary>All tests share one published API, one after the other.</summary>
[CollectionDefinition(Name)]
public sealed class PublishedTests : ICollectionFixture<Published>
{
    public const string Name = "published";
}
