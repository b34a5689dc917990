using RubLab.Core.Catalogues;
using RubLab.Core.Curing;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Salt;
using RubLab.Core.Scaling;

namespace RubLab.Contracts.Brining;

/// <summary>A liquid as the one treatment of one kind of meat, so that the ledger and the limits judge it as they judge any stack.</summary>
/// <param name="Ledger">Its salt.</param>
/// <param name="Limits">Its limited additives.</param>
internal sealed record BrineStack(SaltLedger Ledger, IReadOnlyList<LimitCheck> Limits)
{
    public static BrineStack Of(BrineOutcome outcome, BrineReader read, Cut cut, Catalogue catalogue)
    {
        var parts = UnitTable.Get("parts-by-mass");
        var dose = outcome.Injection is { } injection ? injection.PumpPercent * 10 : outcome.Soak!.LiquidGramsPerKilogram;
        var lines = read.Lines.Ingredients.Select((ingredient, i) => new FormulaLineDraft(ingredient, null, outcome.Liquid.Shares[i], parts, null, null)).ToList();
        var formula = Formula.Create(
            new FormulaDraft
            {
                Name = "brine",
                Kind = read.Kind,
                Base = RatioBase.Green,
                Dose = dose,
                DoseUnit = UnitTable.Get("g/kg"),
                WrittenForGrams = null,
                WrittenForIs = WeightBasis.Green,
                Lines = lines,
            },
            new FaultLog().Root) ?? throw new InvalidOperationException("A liquid that was computed makes no formula.");
        var treatment = new Treatment
        {
            Ratios = FormulaRatios.Of(formula, catalogue, new FindingLog(catalogue), ""),
            OnLines = [0],
            RetainedPercent = outcome.InMeatPercent,
            SaltBefore = outcome.Soak is { SaltInMeatGramsPerKilogram: > 0 } soak
                ? new SaltBefore(
                    soak.SaltInMeatGramsPerKilogram,
                    soak.SaltInMeatGramsPerKilogram * catalogue.Constants.SodiumInSodiumChlorideGramsPerGram,
                    soak.WaterRatio)
                : null,
        };
        var pile = new Pile([new PileLine { Id = cut.Name, Cut = cut, Product = read.Product, SkinPercent = read.SkinPercent, WeightIs = WeightBasis.Green, WeighedGrams = [read.Pieces.MeatGrams] }]);
        return new BrineStack(
            SaltLedger.Of(pile, 0, [treatment], isWeighed: true),
            LimitChecks.Of(AdditiveLoads.Of(pile, 0, [treatment], isWeighed: true), pile.Lines[0], catalogue));
    }
}
