namespace RubLab.Client.Tests;

/// <summary>The real server with a key in its configuration, which everybody then needs.</summary>
public sealed class KeyedKitchen : Kitchen
{
    public const string TheKey = "a-key-for-the-lockside-kitchen-tests";

    protected override string? Key => TheKey;
}
