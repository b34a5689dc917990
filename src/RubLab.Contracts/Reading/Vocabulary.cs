using RubLab.Contracts.Brining;
using RubLab.Contracts.Pairing;
using RubLab.Contracts.Scaling;
using RubLab.Contracts.Serving;
using RubLab.Contracts.Shopping;
using RubLab.Contracts.Timing;
using RubLab.Core.Curing;
using RubLab.Core.Diffusion;
using RubLab.Core.Formulas;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Salt;
using RubLab.Core.Scaling;
using RubLab.Core.Serving;
using RubLab.Core.Sources;
using RubLab.Core.Timing;
using RubLab.Core.Yields;

namespace RubLab.Contracts.Reading;

/// <summary>Every enumeration in the words of the wire.</summary>
public static class Vocabulary
{
    public static Words<FormulaKind> Kinds { get; } = new(
        ("dry-brine", FormulaKind.DryBrine), ("rub", FormulaKind.Rub), ("slather", FormulaKind.Slather),
        ("injection", FormulaKind.Injection), ("soak", FormulaKind.Soak), ("mop", FormulaKind.Mop), ("sauce", FormulaKind.Sauce));

    /// <summary>The ways of a cure that is no liquid.</summary>
    public static Words<CuringMethod> CureMethods { get; } = new(("dry", CuringMethod.Dry), ("ground", CuringMethod.Ground));

    /// <summary>The kinds that are brines.</summary>
    public static Words<FormulaKind> Brines { get; } = new(("injection", FormulaKind.Injection), ("soak", FormulaKind.Soak));

    public static Words<SoakShape> SoakShapes { get; } = new(("slab", SoakShape.Slab), ("cylinder", SoakShape.Cylinder));

    public static Words<SaltingMethod> SaltingMethods { get; } = new(
        ("dry-brine", SaltingMethod.DryBrine), ("soak", SaltingMethod.Soak), ("salt-bed", SaltingMethod.SaltBed));

    public static Words<SaltedShape> SaltedShapes { get; } = new(
        ("slab", SaltedShape.Slab), ("cylinder", SaltedShape.Cylinder), ("brick", SaltedShape.Brick));

    /// <summary>The dimension a face closes.</summary>
    public static Words<PieceDimension> PieceDimensions { get; } = new(
        ("thickness", PieceDimension.Thickness), ("width", PieceDimension.Width), ("length", PieceDimension.Length));

    public static Words<RatioBase> Bases { get; } = new(
        ("green", RatioBase.Green), ("cooked", RatioBase.Cooked), ("portion", RatioBase.Portion), ("area", RatioBase.Area));

    public static Words<WeightBasis> Weights { get; } = new(("green", WeightBasis.Green), ("purchase", WeightBasis.Purchase));

    public static Words<YieldBasis> YieldBases { get; } = new(("green", YieldBasis.Green), ("edible-portion", YieldBasis.EdiblePortion));

    public static Words<Stage> Stages { get; } = new(
        ("before", Stage.Before), ("during", Stage.During), ("wrap", Stage.Wrap), ("after", Stage.After));

    /// <summary>Whether pieces weighed after injection had drained by then.</summary>
    public static Words<WeighedBackState> WeighedBack { get; } = new(
        ("undrained", WeighedBackState.Undrained), ("drained", WeighedBackState.Drained));

    public static Words<PieceListing> Listings { get; } = new(("all", PieceListing.All), ("none", PieceListing.None));

    public static Words<SheetPurpose> Purposes { get; } = new(("sheet", SheetPurpose.Sheet), ("check", SheetPurpose.Check));

    public static Words<PurchaseEnd> PurchaseEnds { get; } = new(("typical", PurchaseEnd.Typical), ("safe", PurchaseEnd.Safe));

    public static Words<YieldOrigin> YieldOrigins { get; } = new(
        ("stated", YieldOrigin.Stated), ("own", YieldOrigin.Own), ("reference", YieldOrigin.Reference),
        ("purchase-yield", YieldOrigin.PurchaseYield));

    public static Words<PlannedBy> PlannedBy { get; } = new(("chain", Contracts.Serving.PlannedBy.Chain), ("purchase-yield", Contracts.Serving.PlannedBy.PurchaseYield));

    public static Words<BoughtIn> BoughtIn { get; } = new(("kg", Contracts.Shopping.BoughtIn.Kilogram), ("lb", Contracts.Shopping.BoughtIn.Pound));

    public static Words<HoldOnChange> Holds { get; } = new(("salt", HoldOnChange.Salt), ("dose", HoldOnChange.Dose));

    public static Words<AccessScope> Scopes { get; } = new(
        ("read", AccessScope.Read), ("write", AccessScope.Write), ("pair", AccessScope.Pair));

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
