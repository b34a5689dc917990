using System.Diagnostics.CodeAnalysis;

namespace RubLab.Storage.Densities;

/// <summary>What came of putting or deleting a density.</summary>
public sealed record DensityWrite
{
    private DensityWrite(WriteOutcome outcome, StoredDensity? density, long? currentRevision)
    {
        Outcome = outcome;
        Density = density;
        CurrentRevision = currentRevision;
    }

    public WriteOutcome Outcome { get; }

    [MemberNotNullWhen(true, nameof(Density))]
    public bool IsWritten => Density is not null;

    /// <summary>The density as written, or as it last was if this deleted it; null when nothing was written.</summary>
    public StoredDensity? Density { get; }

    /// <summary>The revision the density is at, unless it is missing; after a deletion its last.</summary>
    public long? CurrentRevision { get; }

    internal static DensityWrite Missing { get; } = new(WriteOutcome.Missing, null, null);

    internal static DensityWrite Written(StoredDensity density) => new(WriteOutcome.Written, density, density.Revision);

    internal static DensityWrite Taken(long revision) => new(WriteOutcome.Taken, null, revision);

    internal static DensityWrite Stale(long revision) => new(WriteOutcome.Stale, null, revision);
}
