using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Contracts.Remarks;
using RubLab.Contracts.Scaling;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Remarks;

namespace RubLab.Contracts.Formulas;

/// <summary>Changes one line of a formula while the salt or the dose is held.</summary>
public static class FormulaChanges
{
    public static Result<FormulaChangeResponse> Compute(FormulaChangeRequest request, Catalogue catalogue, FormulaLookup formulas)
    {
        var log = new FaultLog();
        var at = log.Root;
        var source = new TreatmentRequest { Formula = request.Formula, FormulaId = request.FormulaId, Revision = request.Revision };
        var formula = FormulaSource.Read(source, catalogue, formulas, at, out _, out _);
        var hold = Vocabulary.Holds.Read(request.Hold, at.At("hold"), HoldOnChange.Salt).GetValueOrDefault();
        if (request.Amount is null == request.Form is null)
        {
            at.Fault("one-or-the-other", "Give exactly one of amount and form.");
        }

        if (request is { Form: not null, Hold: not null })
        {
            at.At("hold").Fault("needs-other", "hold belongs to amount: another form changes no mass, so both are held.");
        }

        if (request.Line is null)
        {
            Reader.Missing(at.At("line"));
        }

        if (formula is null || !log.IsClean)
        {
            return log.ResultOf<FormulaChangeResponse>(null);
        }

        var changed = Change(formula, request, hold, catalogue, at);
        if (changed is null)
        {
            return log.ResultOf<FormulaChangeResponse>(null);
        }

        var findings = new FindingLog(catalogue);
        var after = FormulaRatios.Of(changed, catalogue, findings, "/formula");
        MixFindings.Notice(after, null, catalogue, findings, "/formula");
        return log.ResultOf(new FormulaChangeResponse(
            FormulaAnswers.Authored(changed),
            FiguresOf(FormulaRatios.Of(formula, catalogue, new FindingLog(catalogue), "")),
            FiguresOf(after),
            FindingResponse.From(findings),
            catalogue.Version));
    }

    private static Formula? Change(Formula formula, FormulaChangeRequest request, HoldOnChange hold, Catalogue catalogue, Place at)
    {
        var index = request.Line!.Value;
        if (index < 0 || index >= formula.Lines.Count)
        {
            at.At("line").Fault(
                "out-of-range", $"The formula has lines 0 to {formula.Lines.Count - 1}.",
                ("value", (double)index), ("lowest", 0d), ("highest", (double)(formula.Lines.Count - 1)));
            return null;
        }

        var line = formula.Lines[index];
        if (request.Form is not null)
        {
            if (Lookup.Form(request.Form, line.Ingredient, at.At("form")) is not { } form)
            {
                return null;
            }

            var reformed = LineChange.WithForm(formula, index, form, catalogue);
            if (reformed is null)
            {
                at.At("form").Fault("no-density", $"{line.Ingredient.Name}, {form.Name}: no density is known, and the line is written by volume.");
            }

            return reformed;
        }

        if (line.IsRest)
        {
            at.At("amount").Fault("rest-has-no-amount", "This line makes up the rest of the liquid: change another line, and it follows.");
            return null;
        }

        if (Reader.Within(request.Amount!.Value, line.Unit, Bounds.LineOf(line.Unit, formula.Kind), at.At("amount")) is null)
        {
            return null;
        }

        if (formula.Lines.Where((_, i) => i != index).All(l => l.Amount == 0) && request.Amount == 0)
        {
            at.At("amount").Fault("all-zero", "Every line would be zero.");
            return null;
        }

        var sum = request.Amount.Value + formula.Lines.Where((l, i) => i != index && !l.IsRest).Sum(l => l.Amount);
        if (formula.Mode == AuthoringMode.PercentOfLiquid && sum >= 100)
        {
            at.At("amount").Fault("no-rest", $"The lines would come to {Figures.Read(sum, 100)} % of the liquid and leave nothing for the rest.", ("sum", sum));
            return null;
        }

        var changed = LineChange.WithAmount(formula, index, request.Amount.Value, hold, catalogue);
        if (changed is null)
        {
            at.At("hold").Fault("salt-not-held", "The changed mix has no salt, so no dose of it keeps the salt. Hold the dose instead.");
        }

        return changed;
    }

    private static MixFigures FiguresOf(FormulaRatios ratios)
    {
        var unit = FormulaAnswers.UnitOf(ratios.Formula.Base);
        return new MixFigures(
            new Quantity(Rounded.Exact(ratios.DoseGramsPerKilogram), unit),
            QuantityBand.From(ratios.SaltSharePercent.Times(ratios.DoseGramsPerKilogram / 100), unit, Rounded.Ledger),
            QuantityBand.From(ratios.SaltSharePercent, "%", Rounded.Estimate));
    }
}
