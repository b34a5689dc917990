using RubLab.Core.Sources;
using RubLab.Core.Yields;

namespace RubLab.Core.Meat;

/// <summary>A kind of meat, with what is known of it from outside. Figures nobody published are absent.</summary>
public sealed record Cut
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    public required string Species { get; init; }

    /// <summary><c>red-meat</c> or <c>poultry</c>: which cautions hold.</summary>
    public required string Class { get; init; }

    /// <summary>The products of <see cref="Salt.SaltRange"/> this cut is compared with.</summary>
    public required IReadOnlyList<string> SaltProducts { get; init; }

    public required Citation Citation { get; init; }

    public required MeatComposition? Composition { get; init; }

    /// <summary>Loss from purchase to green weight, percent of purchase weight.</summary>
    public required Cited? TrimLossPercent { get; init; }

    /// <summary>Cooked weight, percent of green weight, by method; the default first.</summary>
    public required IReadOnlyList<CookYield> CookYields { get; init; }

    /// <summary>What the kitchen has recorded of cooking it itself, the yield with most records first.</summary>
    public IReadOnlyList<OwnYield> OwnYields { get; init; } = [];

    /// <summary>The kitchen's own cooked over green weight; none where it has recorded no green weight.</summary>
    public OwnYield? OwnCookYield => OwnYields.FirstOrDefault(y => !y.IsOfPurchase);

    /// <summary>What its pieces look like; none where nobody would say.</summary>
    public required CutShape? Shape { get; init; }

    /// <summary>Bone, percent of green weight.</summary>
    public required Cited? BonePercent { get; init; }

    /// <summary>The same meat sold with added solution.</summary>
    public required MeatComposition? WithAddedSolution { get; init; }

    /// <summary>How much of its salt stays in the meat through cooking, percent.</summary>
    public required Cited? KeptInCookingPercent { get; init; }
}
