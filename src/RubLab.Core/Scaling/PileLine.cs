using RubLab.Core.Formulas;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;

namespace RubLab.Core.Scaling;

/// <summary>Pieces of one cut that share everything but their weight.</summary>
public sealed record PileLine
{
    public required string Id { get; init; }

    public required Cut Cut { get; init; }

    public required WeightBasis WeightIs { get; init; }

    /// <summary>Each piece as weighed, in grams; empty where a check needs no weights.</summary>
    public required IReadOnlyList<double> WeighedGrams { get; init; }

    /// <summary>Labels of the pieces; none, or one (possibly null) per piece.</summary>
    public IReadOnlyList<string?>? Labels { get; init; }

    /// <summary>Factors on the dose; none, or one per piece. Zero for a skipped piece.</summary>
    public IReadOnlyList<double>? DoseFactors { get; init; }

    /// <summary>Measured thickness of the pieces, mm; none, or one (possibly null) per piece.</summary>
    public IReadOnlyList<double?>? ThicknessMillimetres { get; init; }

    /// <summary>Pieces weighed again after injection, grams; none, or one (possibly null) per piece.</summary>
    public IReadOnlyList<double?>? WeighedBackGrams { get; init; }

    /// <summary>They had drained by then: what they gained is what stays, not what was put in.</summary>
    public bool IsWeighedBackDrained { get; init; }

    /// <summary>Percent of purchase weight trimmed off; none when the meat was weighed green or the trim is not known yet.</summary>
    public double? TrimLossPercent { get; init; }

    /// <summary>Percent of green weight that is bone.</summary>
    public double? BonePercent { get; init; }

    /// <summary>Percent of green weight that is skin, which the levels of bacon leave out.</summary>
    public double? SkinPercent { get; init; }

    /// <summary>Percent of raw weight the packer added as solution.</summary>
    public double? AddedSolutionPercent { get; init; }

    /// <summary>Sodium of the raw meat as its pack states it, mg per 100 g.</summary>
    public double? PackSodiumMilligramsPer100Grams { get; init; }

    /// <summary>Thickness of a slice, for the salt of centre and end slices, mm.</summary>
    public double? SliceMillimetres { get; init; }

    /// <summary>Cooked over green weight, percent, as the kitchen knows it.</summary>
    public Band? CookYieldPercent { get; init; }

    /// <summary>Salt that stays in the meat through cooking, percent, as the kitchen knows it.</summary>
    public Band? KeptInCookingPercent { get; init; }

    /// <summary>The cooking juices go back on the meat, and their salt with them.</summary>
    public bool JuicesReturned { get; init; }

    /// <summary>What is made of the meat, in place of what its cut is usually held against; none when nobody said.</summary>
    public string? Product { get; init; }

    /// <summary>Ground, or on its way into a product that is: what goes on it is mixed in.</summary>
    public bool IsGround => GroundProducts.AreMadeOf(Cut, Product);

    /// <summary>Blades or needles went through the meat, by the packer or in the kitchen.</summary>
    public bool IsBladeTenderised { get; init; }

    /// <summary>Weight of one portion of cooked meat, grams.</summary>
    public double? PortionGrams { get; init; }

    /// <summary>The trim is missing on meat weighed as bought: the line can be planned, not weighed out.</summary>
    public bool IsPlanned => WeightIs == WeightBasis.Purchase && TrimLossPercent is null;

    /// <summary>The trim counted with: as stated, else the reference's typical, else none.</summary>
    public double TrimCountedPercent => WeightIs == WeightBasis.Green
        ? 0
        : TrimLossPercent ?? Cut.TrimLossPercent?.Band.Typical ?? 0;

    /// <summary>Green weight per weight as weighed.</summary>
    public double GreenPerWeighed => 1 - (TrimCountedPercent / 100);

    /// <summary>Cooked over green of whole pieces, percent: the kitchen's own figure, else the reference's default.</summary>
    public Band? YieldCountedPercent => CookYieldPercent ?? (Cut.CookYields.Count > 0 ? Cut.CookYields[0].PercentOfGreen(BoneFraction) : null);

    /// <summary>Salt kept, percent: all of it when the juices go back, else the kitchen's figure, else the reference's.</summary>
    public Band? KeptCountedPercent => JuicesReturned
        ? Band.Exact(100)
        : KeptInCookingPercent ?? Cut.KeptInCookingPercent?.Band;

    /// <summary>Bone in the green weight, 0 to 1: as stated, else the cut's typical, else none.</summary>
    public double BoneFraction => (BonePercent ?? Cut.BonePercent?.Band.Typical ?? 0) / 100;

    /// <summary>The products of <see cref="Salt.SaltRange"/> this line is compared with.</summary>
    public IReadOnlyList<string> SaltProducts => Product is { } product ? [product] : Cut.SaltProducts;

    /// <summary>Sodium of the raw meat without its bone, mg per 100 g: from the pack, else the reference's for meat with
    /// or without added solution; none where nobody published it.</summary>
    public double? RawSodiumMilligramsPer100Grams => PackSodiumMilligramsPer100Grams
        ?? (AddedSolutionPercent > 0 ? Cut.WithAddedSolution : null)?.SodiumMilligramsPer100Grams
        ?? Cut.Composition?.SodiumMilligramsPer100Grams;

    /// <summary>Size and surface of a piece; none where the cut has no shape.</summary>
    public PieceGeometry? GeometryOf(int piece, double greenGrams) =>
        Cut.Shape is { } shape ? PieceGeometry.Of(shape, greenGrams, ThicknessMillimetres?[piece]) : null;

    /// <summary>Cooked meat without bone per green weight, at a yield of the whole piece in percent. Bone is taken to lose nothing.</summary>
    public double EdiblePerGreen(double yieldPercent) => (yieldPercent / 100) - BoneFraction;

    /// <summary>Cooked meat without bone over the cooked piece, 0 to 1; none without a yield, or where that leaves no more than the bone.</summary>
    public Band? EdiblePerCooked => YieldCountedPercent is { } yield && EdiblePerGreen(yield.Low) > 0
        ? new Band(1 - BoneOver(yield.Low), 1 - BoneOver(yield.Typical), 1 - BoneOver(yield.High))
        : null;

    private double BoneOver(double yieldPercent) => BoneFraction / (yieldPercent / 100);
}
