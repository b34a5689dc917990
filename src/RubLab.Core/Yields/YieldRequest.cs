using RubLab.Core.Quantities;

namespace RubLab.Core.Yields;

/// <summary>What is said about the yield of a cut; all of it may be left out.</summary>
public readonly record struct YieldRequest
{
    /// <summary>Way of cooking; none for the default.</summary>
    public string? Method { get; init; }

    /// <summary>Loss from purchase to green weight.</summary>
    public Band? TrimPercent { get; init; }

    /// <summary>Cooked over green weight, bone in both.</summary>
    public Band? CookYieldPercent { get; init; }

    /// <summary>Bone in green weight.</summary>
    public Band? BonePercent { get; init; }

    /// <summary>Plan by a published yield straight from purchase weight.</summary>
    public bool ByPurchaseYield { get; init; }

    /// <summary>The weight at hand is trimmed: a yield of purchase weight does not fit it.</summary>
    public bool IsOfGreen { get; init; }
}
