namespace RubLab.Storage.Keys;

/// <summary>A key just issued, with the only copy of its text there will ever be.</summary>
public sealed record IssuedKey(AccessKey Key, string PlainKey)
{
    /// <summary>Without the secret, which would end up in a log.</summary>
    public override string ToString() => $"IssuedKey {{ Key = {Key} }}";
}
