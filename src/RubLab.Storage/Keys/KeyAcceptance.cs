namespace RubLab.Storage.Keys;

/// <summary>What became of a key given in the server's configuration.</summary>
public enum KeyAcceptance
{
    /// <summary>It opens its kitchen, with the name and scopes now configured.</summary>
    Accepted,

    /// <summary>It was revoked, which a restart with the same configuration does not undo.</summary>
    Revoked,

    /// <summary>Another kitchen has it already.</summary>
    HeldByAnotherKitchen,

    /// <summary>Shorter than <see cref="KeyStore.ShortestAcceptedKey"/>; not stored.</summary>
    TooShort,
}
