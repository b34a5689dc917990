using RubLab.Contracts.Scaling;
using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Salt;
using RubLab.Core.Scaling;
using RubLab.Core.Sources;

namespace RubLab.Contracts.Reading;

/// <summary>Every enumeration in the words of the wire.</summary>
public static class Vocabulary
{
    public static Words<FormulaKind> Kinds { get; } = new(
        ("dry-brine", FormulaKind.DryBrine), ("rub", FormulaKind.Rub), ("slather", FormulaKind.Slather),
        ("injection", FormulaKind.Injection), ("soak", FormulaKind.Soak), ("mop", FormulaKind.Mop), ("sauce", FormulaKind.Sauce));

    public static Words<RatioBase> Bases { get; } = new(
        ("green", RatioBase.Green), ("cooked", RatioBase.Cooked), ("portion", RatioBase.Portion), ("area", RatioBase.Area));

    public static Words<WeightBasis> Weights { get; } = new(("green", WeightBasis.Green), ("purchase", WeightBasis.Purchase));

    public static Words<Stage> Stages { get; } = new(
        ("before", Stage.Before), ("during", Stage.During), ("wrap", Stage.Wrap), ("after", Stage.After));

    public static Words<PieceListing> Listings { get; } = new(("all", PieceListing.All), ("none", PieceListing.None));

    public static Words<SheetPurpose> Purposes { get; } = new(("sheet", SheetPurpose.Sheet), ("check", SheetPurpose.Check));

    public static Words<HoldOnChange> Holds { get; } = new(("salt", HoldOnChange.Salt), ("dose", HoldOnChange.Dose));

    public static Words<Verdict> Verdicts { get; } = new(
        ("within", Verdict.Within), ("below", Verdict.Below), ("above", Verdict.Above), ("cannot-tell", Verdict.CannotTell));

    public static Words<Severity> Severities { get; } = new(
        ("info", Severity.Info), ("advice", Severity.Advice), ("warning", Severity.Warning), ("danger", Severity.Danger));

    public static Words<Confidence> Confidences { get; } = new(
        ("high", Confidence.High), ("good", Confidence.Good), ("fair", Confidence.Fair), ("low", Confidence.Low),
        ("very-low", Confidence.VeryLow));

    public static Words<Dimension> Dimensions { get; } = new(
        ("mass", Dimension.Mass), ("volume", Dimension.Volume), ("ratio", Dimension.Ratio),
        ("share-of-liquid", Dimension.ShareOfLiquid), ("share-of-water", Dimension.ShareOfWater),
        ("coverage", Dimension.Coverage), ("density", Dimension.Density), ("parts-by-mass", Dimension.PartsByMass),
        ("parts-by-volume", Dimension.PartsByVolume), ("length", Dimension.Length), ("temperature", Dimension.Temperature),
        ("time", Dimension.Time), ("diffusivity", Dimension.Diffusivity));
}
