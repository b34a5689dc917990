using RubLab.Core.Quantities;

namespace RubLab.Core.Yields;

/// <summary>
/// What becomes of a kilogram as bought: trimmed, cooked, without bone. Each figure is evaluated at the corners of what it
/// hangs on; all are fractions, and each is divided by, never added as a loss.
/// </summary>
public sealed record EdibleYield
{
    private EdibleYield()
    {
    }

    /// <summary>Cooked meat without bone per purchase weight.</summary>
    public required Band EdiblePerPurchase { get; init; }

    /// <summary>Trimmed weight per purchase weight; none where the yield skips it.</summary>
    public Band? GreenPerPurchase { get; private init; }

    /// <summary>Cooked weight with bone per purchase weight; none where the yield skips it.</summary>
    public Band? CookedPerPurchase { get; private init; }

    /// <summary>Bone per purchase weight; none where the yield skips it.</summary>
    public Band? BonePerPurchase { get; private init; }

    /// <summary>Cooked meat without bone per trimmed weight; none where the yield skips it.</summary>
    public Band? EdiblePerGreen { get; private init; }

    /// <summary>Cooked weight with bone per edible weight; none where the yield skips it.</summary>
    public Band? CookedPerEdible { get; private init; }

    /// <summary>By trim, cooking yield and bone; none where the bone would leave nothing to eat.</summary>
    /// <param name="trimPercent">Of purchase weight.</param>
    /// <param name="yieldPercent">Cooked over green weight with the bone in both, or over the edible portion without it in either.</param>
    /// <param name="bonePercent">Of green weight; it keeps its weight in the cooker.</param>
    /// <param name="yieldIsOfGreen">Which of the two the yield is.</param>
    public static EdibleYield? OfChain(Band trimPercent, Band yieldPercent, Band bonePercent, bool yieldIsOfGreen)
    {
        Band trim = trimPercent.Over(100), cook = yieldPercent.Over(100), bone = bonePercent.Over(100);
        if (yieldIsOfGreen && cook.Low <= bone.High)
        {
            return null;
        }

        var green = Rest(trim);
        var edible = yieldIsOfGreen ? Less(cook, bone) : Rest(bone).Times(cook);
        var cooked = yieldIsOfGreen
            ? cook
            : Ordered(WithBone(cook.Low, bone.Low), WithBone(cook.Typical, bone.Typical), WithBone(cook.High, bone.High));
        var perEdible = yieldIsOfGreen
            ? Ordered(cook.High / (cook.High - bone.Low), cook.Typical / edible.Typical, cook.Low / (cook.Low - bone.High))
            : Ordered(
                WithBone(cook.High, bone.Low) / edible.High, cooked.Typical / edible.Typical, WithBone(cook.Low, bone.High) / edible.Low);
        return new EdibleYield
        {
            EdiblePerPurchase = green.Times(edible),
            GreenPerPurchase = green,
            CookedPerPurchase = green.Times(cooked),
            BonePerPurchase = green.Times(bone),
            EdiblePerGreen = edible,
            CookedPerEdible = perEdible,
        };
    }

    /// <summary>By a yield from purchase to cooked weight, bone in both; none where the bone would leave nothing to eat.</summary>
    public static EdibleYield? OfCookedPurchase(Band cookedPercent, Band trimPercent, Band bonePercent)
    {
        Band cooked = cookedPercent.Over(100), bone = Rest(trimPercent.Over(100)).Times(bonePercent.Over(100));
        if (cooked.Low <= bone.High)
        {
            return null;
        }

        var edible = Less(cooked, bone);
        return new EdibleYield
        {
            EdiblePerPurchase = edible,
            CookedPerPurchase = cooked,
            BonePerPurchase = bone,
            CookedPerEdible = Ordered(cooked.High / (cooked.High - bone.Low), cooked.Typical / edible.Typical, cooked.Low / (cooked.Low - bone.High)),
        };
    }

    /// <summary>By a yield straight from purchase to edible weight.</summary>
    public static EdibleYield OfPurchase(Band ediblePercent) => new() { EdiblePerPurchase = ediblePercent.Over(100) };

    // Two ends that differ by a last bit may come out in the other order.
    private static Band Ordered(double low, double typical, double high) => new(Math.Min(low, typical), typical, Math.Max(typical, high));

    private static Band Rest(Band part) => new(1 - part.High, 1 - part.Typical, 1 - part.Low);

    private static Band Less(Band whole, Band part) => new(whole.Low - part.High, whole.Typical - part.Typical, whole.High - part.Low);

    private static double WithBone(double yieldOfMeat, double bone) => ((1 - bone) * yieldOfMeat) + bone;
}
