namespace RubLab.Storage.Pairing;

/// <summary>A device just paired, with the only copy of its token there will ever be.</summary>
public sealed record StartedSession(DeviceSession Session, string PlainToken)
{
    /// <summary>Without the secret, which would end up in a log.</summary>
    public override string ToString() => $"StartedSession {{ Session = {Session} }}";
}
