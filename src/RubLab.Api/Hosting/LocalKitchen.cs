namespace RubLab.Api.Hosting;

/// <summary>The kitchen of whoever works on this machine itself.</summary>
public static class LocalKitchen
{
    public const string Id = "local";
    public const string Name = "Lockside Kitchen";
}
