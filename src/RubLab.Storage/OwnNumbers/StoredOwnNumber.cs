namespace RubLab.Storage.OwnNumbers;

/// <summary>A kitchen's own density of one form, or yield of one cut, as one revision of it is.</summary>
/// <param name="Key">Of what.</param>
/// <param name="Revision">From 1 up, without gaps, through deletion and putting again too.</param>
/// <param name="Document">The weighings or records as JSON text, opaque here.</param>
/// <param name="UpdatedAt">When this revision was written.</param>
public sealed record StoredOwnNumber<TKey>(TKey Key, long Revision, string Document, DateTimeOffset UpdatedAt)
    where TKey : IOwnNumberKey<TKey>;
