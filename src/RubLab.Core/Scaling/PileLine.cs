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

    /// <summary>Percent of purchase weight trimmed off; none when the meat was weighed green or the trim is not known yet.</summary>
    public double? TrimLossPercent { get; init; }

    /// <summary>Percent of green weight that is bone.</summary>
    public double? BonePercent { get; init; }

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

    /// <summary>Cooked over green, percent: the kitchen's own figure, else the reference's default.</summary>
    public Band? YieldCountedPercent => CookYieldPercent ?? (Cut.CookYields.Count > 0 ? Cut.CookYields[0].Percent : null);

    /// <summary>Salt kept, percent: all of it when the juices go back, else the kitchen's figure, else the reference's.</summary>
    public Band? KeptCountedPercent => JuicesReturned
        ? Band.Exact(100)
        : KeptInCookingPercent ?? Cut.KeptInCookingPercent?.Band;

    /// <summary>Bone in the green weight, 0 to 1: as stated, else the cut's typical, else none.</summary>
    public double BoneFraction => (BonePercent ?? Cut.BonePercent?.Band.Typical ?? 0) / 100;

    /// <summary>Sodium of the raw meat without its bone, mg per 100 g: from the pack, else the reference's for meat with
    /// or without added solution; none where nobody published it.</summary>
    public double? RawSodiumMilligramsPer100Grams => PackSodiumMilligramsPer100Grams
        ?? (AddedSolutionPercent > 0 ? Cut.WithAddedSolution : null)?.SodiumMilligramsPer100Grams
        ?? Cut.Composition?.SodiumMilligramsPer100Grams;

    /// <summary>Size and surface of a piece; none where the cut has no shape.</summary>
    public PieceGeometry? GeometryOf(int piece, double greenGrams) =>
        Cut.Shape is { } shape ? PieceGeometry.Of(shape, greenGrams, ThicknessMillimetres?[piece]) : null;

    /// <summary>Cooked meat without bone per green weight, at a cook yield in percent.</summary>
    public double EdiblePerGreen(double yieldPercent) => (1 - BoneFraction) * yieldPercent / 100;
}
