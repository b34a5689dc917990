namespace RubLab.Storage.OwnNumbers;

internal sealed class OwnNumberRow
{
    public string First { get; init; } = "";

    public string? Second { get; init; }

    public long Revision { get; init; }

    public string Document { get; init; } = "";

    public string UpdatedAt { get; init; } = "";

    public StoredOwnNumber<TKey> ToStored<TKey>()
        where TKey : IOwnNumberKey<TKey> =>
        new(TKey.Of(First, Second), Revision, Document, Timestamp.Read(UpdatedAt));
}
