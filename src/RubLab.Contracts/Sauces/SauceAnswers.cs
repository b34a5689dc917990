using RubLab.Contracts.Formulas;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Contracts.Remarks;
using RubLab.Contracts.Salt;
using RubLab.Contracts.Scaling;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Salt;
using RubLab.Core.Sauces;

namespace RubLab.Contracts.Sauces;

/// <summary>Computes a sauce from what was posted.</summary>
public static class SauceAnswers
{
    private const double GramsPerKilogram = 1000;

    public static Result<SauceResponse> Compute(SauceRequest request, Catalogue catalogue, FormulaLookup formulas)
    {
        var log = new FaultLog();
        var at = log.Root;
        var findings = new FindingLog(catalogue);
        var source = new TreatmentRequest { Formula = WithAnyDose(request.Formula), FormulaId = request.FormulaId, Revision = request.Revision };
        var formula = FormulaSource.Read(source, catalogue, formulas, at, out var formulaAt, out var isInline);
        if (formula is { Kind: not (FormulaKind.Sauce or FormulaKind.Mop) })
        {
            formulaAt.Fault("no-sauce", $"'{formula.Name}' is no sauce or mop.", ("kind", Vocabulary.Kinds[formula.Kind]));
        }

        var make = Reader.Amount(request.Make, at.At("make"), Bounds.MeatGrams, isRequired: false, Dimension.Mass);
        var serving = ServingReader.Read(request, catalogue, at);
        if (formula is null || serving is null || !log.IsClean)
        {
            Reduce(request.Reduce, null, at.At("reduce"));
            return log.ResultOf<SauceResponse>(null);
        }

        var pot = Reduction.Of(FormulaRatios.Of(formula, catalogue, new FindingLog(catalogue), ""));
        if (Reduce(request.Reduce, pot, at.At("reduce")) is { } left)
        {
            formula = formula with { PercentLeft = left };
        }

        if (!log.IsClean)
        {
            return log.ResultOf<SauceResponse>(null);
        }

        var ratios = FormulaRatios.Of(formula, catalogue, findings, formulaAt.Pointer, isInline);
        MixFindings.Notice(ratios, null, catalogue, findings, formulaAt.Pointer);
        serving.Notice(formula.Name, findings);
        return log.ResultOf(Answer(ratios, pot, make, serving, findings, catalogue));
    }

    private static SauceResponse Answer(
        FormulaRatios ratios, Reduction pot, double? make, ServingReader serving, FindingLog findings, Catalogue catalogue)
    {
        var left = ratios.Formula.PercentLeft;
        var intoPot = make is { } wanted ? wanted / left * 100 : WrittenGrams(ratios) ?? GramsPerKilogram / left * 100;
        var salt = PerKilogramFinished(ratios, i => i.SaltGramsPerGram);
        var sodium = PerKilogramFinished(ratios, i => i.SodiumGramsPerGram);
        var portion = serving.Portion(sodium);
        return new SauceResponse
        {
            Name = ratios.Formula.Name,
            IntoPot = Grams(intoPot),
            BoiledOff = Grams(intoPot * (100 - left) / 100),
            Finished = Grams(intoPot * left / 100),
            ReducedTo = new Quantity(Rounded.Exact(left), "%"),
            Solids = new Quantity(Rounded.Estimate(pot.SolidsPercentAt(left)), "%"),
            Lines = ratios.Lines.Select(line => From(line, intoPot, left)).ToList(),
            SaltPerKgFinished = QuantityBand.From(salt, "g/kg", Rounded.Ledger),
            SodiumPer100g = QuantityBand.From(sodium.Times(100), "mg", Rounded.Whole),
            Portion = portion,
            ReferenceAmounts = serving.ReferenceAmounts(sodium),
            Checks = serving.PortionSodiumMilligrams(sodium) is { } milligrams
                ? SaltCheck.OfPortion(milligrams, catalogue).Select(CheckResponse.From).ToList()
                : [],
            Findings = FindingResponse.From(findings),
            Cautions = new CautionSubject([ratios.Formula.Kind], [.. ratios.Lines.Select(l => l.Line.Ingredient)], []).Cautions(catalogue),
            DataVersion = catalogue.Version,
        };
    }

    // No meat is asked about, so a card without a dose needs none: any will do, and none is shown.
    private static FormulaRequest? WithAnyDose(FormulaRequest? formula)
    {
        var isOfMeat = formula?.Lines?.All(l => l?.Amount?.Unit is { } symbol && UnitTable.TryFind(symbol, out var unit) && unit.Dimension == Dimension.Ratio) ?? true;
        return formula is { Dose: null, WrittenFor: null } && !isOfMeat && formula.Base != "area"
            ? formula with { Dose = QuantityRequest.Of(GramsPerKilogram, "g/kg") }
            : formula;
    }

    private static double? Reduce(SauceReductionRequest? reduce, Reduction? pot, Place at)
    {
        if (reduce is null)
        {
            return null;
        }

        var given = (reduce.Left is null ? 0 : 1) + (reduce.Solids is null ? 0 : 1) + (reduce.Salt is null ? 0 : 1);
        if (given != 1)
        {
            at.Fault("one-or-the-other", "Give exactly one of left, solids and salt.");
            return null;
        }

        var (name, quantity) = reduce.Left is { } l ? ("left", l) : reduce.Solids is { } so ? ("solids", so) : ("salt", reduce.Salt!);
        var percent = Reader.Percent(quantity, at.At(name), name == "left" ? Bounds.PercentLeft : Bounds.Percent with { LowestIsAllowed = false });
        if (percent is not { } target || pot is null)
        {
            return null;
        }

        var left = name switch { "left" => target, "solids" => pot.PercentLeftAtSolids(target), _ => pot.PercentLeftAtSalt(target) };
        if (pot.CanReach(left))
        {
            return left;
        }

        if (left > 100)
        {
            at.At(name).At("value").Fault(
                "reduction-adds-water", $"The pot holds more than that before anything boils off: it would take water, not boiling.", ("value", target));
        }
        else
        {
            at.At(name).At("value").Fault(
                "reduced-below-solids", "Only water boils off, and there is not so much water in this pot.",
                ("value", target), ("lowest", Math.Ceiling(pot.SolidsGramsPerKilogram) / 10));
        }

        return null;
    }

    // What a card's own amounts come to; none for a formula in shares or in ratios to meat.
    private static double? WrittenGrams(FormulaRatios ratios)
    {
        if (ratios.Formula.Mode != AuthoringMode.Amounts)
        {
            return null;
        }

        var line = ratios.Lines.MaxBy(l => l.Share.Typical)!;
        var amount = line.Line.Unit.ToBase(line.Line.Amount);
        var grams = line.Line.Unit.Dimension == Dimension.Volume ? amount * line.Density!.GramsPerMillilitre.Typical : amount;
        return grams / line.Share.Typical;
    }

    // A pot is filled by the card: what is written in cups is measured in cups, with their doubt.
    private static Band PerKilogramFinished(FormulaRatios ratios, Func<Ingredient, Band> gramsPerGram) =>
        ratios.GramsPerKilogram(gramsPerGram, isWeighed: false, isDosed: true).Times(GramsPerKilogram / ratios.DoseGramsPerKilogram);

    private static SauceLineResponse From(LineRatio line, double intoPot, double left) => new(
        line.Line.Ingredient.Id,
        line.Line.Form.Id,
        Grams(line.Share.Typical * intoPot),
        QuantityBand.From(line.Share.Times(100), "%", line.Share.IsExact ? Rounded.Exact : Rounded.Estimate),
        QuantityBand.From(line.Share.Times(line.Line.Ingredient.SaltGramsPerGram).Times(GramsPerKilogram / left * 100), "g/kg", Rounded.Ledger));

    private static Quantity Grams(double grams) => new(Rounded.Exact(Math.Round(grams, 2)), "g");
}
