using System.Diagnostics.CodeAnalysis;

namespace RubLab.Storage.OwnNumbers;

/// <summary>What came of putting or deleting an own number.</summary>
public sealed record OwnNumberWrite<TKey>
    where TKey : IOwnNumberKey<TKey>
{
    private OwnNumberWrite(WriteOutcome outcome, StoredOwnNumber<TKey>? stored, long? currentRevision)
    {
        Outcome = outcome;
        Stored = stored;
        CurrentRevision = currentRevision;
    }

    public WriteOutcome Outcome { get; }

    [MemberNotNullWhen(true, nameof(Stored))]
    public bool IsWritten => Stored is not null;

    /// <summary>The number as written, or as it last was if this deleted it; null when nothing was written.</summary>
    public StoredOwnNumber<TKey>? Stored { get; }

    /// <summary>The revision the number is at, unless it is missing; after a deletion its last.</summary>
    public long? CurrentRevision { get; }

    internal static OwnNumberWrite<TKey> Missing { get; } = new(WriteOutcome.Missing, null, null);

    internal static OwnNumberWrite<TKey> Written(StoredOwnNumber<TKey> stored) => new(WriteOutcome.Written, stored, stored.Revision);

    internal static OwnNumberWrite<TKey> Taken(long revision) => new(WriteOutcome.Taken, null, revision);

    internal static OwnNumberWrite<TKey> Stale(long revision) => new(WriteOutcome.Stale, null, revision);
}
