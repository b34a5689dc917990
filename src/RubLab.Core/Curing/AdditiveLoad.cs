using RubLab.Core.Quantities;

namespace RubLab.Core.Curing;

/// <summary>All that a stack brings of one additive to one pile line.</summary>
/// <param name="Additive">The additive.</param>
/// <param name="Base">What the parts per million are of.</param>
/// <param name="Shares">One for each treatment that brings any, in order.</param>
public sealed record AdditiveLoad(string Additive, LimitBase Base, IReadOnlyList<AdditiveShare> Shares)
{
    /// <summary>What the meat itself brings; only fat is counted so.</summary>
    public Band OfMeatPartsPerMillion { get; init; } = Band.Exact(0);

    public LoadKnowledge Knowledge { get; init; }

    /// <summary>Nitrite and nitrate as the sodium salt.</summary>
    public Band PartsPerMillion => Shares.Aggregate(OfMeatPartsPerMillion, (sum, share) => sum.Plus(share.PartsPerMillion));

    /// <summary>By the weight of the salts that are used.</summary>
    public Band OwnPartsPerMillion => Shares.Aggregate(OfMeatPartsPerMillion, (sum, share) => sum.Plus(share.OwnPartsPerMillion));

    public bool IsBy(CuringMethod method) => Shares.Any(share => share.Method == method);
}
