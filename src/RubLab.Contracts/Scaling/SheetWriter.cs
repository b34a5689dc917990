using RubLab.Contracts.Formulas;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Core.Formulas;
using RubLab.Core.Scaling;

namespace RubLab.Contracts.Scaling;

/// <summary>Writes a computed sheet in the words of the wire.</summary>
internal static class SheetWriter
{
    public static IReadOnlyList<SheetTreatmentResponse> Treatments(BatchSheet sheet, bool withPieces) =>
        sheet.Treatments.Select(t => From(t, sheet.Request, withPieces)).ToList();

    /// <summary>A weight of meat in the weighing step's unit, to about a tenth of a gram.</summary>
    public static Quantity Weight(double grams, WeighingStep step)
    {
        var decimals = step.Unit.Symbol switch { "mg" => 0, "g" => 1, "oz" => 2, _ => 4 };
        return new Quantity(Math.Round(step.Unit.FromBase(grams), decimals, MidpointRounding.AwayFromZero), step.Unit.Symbol);
    }

    private static SheetTreatmentResponse From(TreatmentSheet sheet, SheetRequest request, bool withPieces)
    {
        var treatment = sheet.Treatment;
        var formula = treatment.Ratios.Formula;
        var unit = FormulaAnswers.UnitOf(formula.Base);
        return new SheetTreatmentResponse
        {
            Name = formula.Name,
            Kind = Vocabulary.Kinds[formula.Kind],
            Dose = new Quantity(Rounded.Exact(treatment.DoseCounted), unit),
            Base = treatment.Ratios.RatiosAreOf == WeightBasis.Purchase ? "purchase" : Vocabulary.Bases[formula.Base],
            Applications = treatment.Applications,
            Stage = treatment.Stage is { } stage ? Vocabulary.Stages[stage] : null,
            OnMeat = Amount(sheet.OnMeatSteps, request.Step),
            ToMix = Amount(sheet.ToMixSteps, request.Step),
            Lines = LinesOf(sheet, request.Step, unit),
            Pieces = withPieces ? PiecesOf(sheet, request) : null,
        };
    }

    private static List<SheetLineResponse> LinesOf(TreatmentSheet sheet, WeighingStep step, string unit)
    {
        var lines = new List<SheetLineResponse>(sheet.LineSteps.Count);
        long running = 0;
        for (var i = 0; i < sheet.LineSteps.Count; i++)
        {
            var line = sheet.Treatment.Ratios.Lines[i];
            var steps = sheet.LineSteps[i];
            running += steps;
            lines.Add(new SheetLineResponse(
                line.Line.Ingredient.Id,
                line.Line.Form.Id,
                new Quantity(Rounded.Exact(line.RatioGramsPerKilogram.Typical * sheet.Treatment.DoseScale), unit),
                Amount(steps, step),
                Amount(running, step),
                SpoonResponse.From(SpoonMeasure.Of(step.GramsOf(steps), line.Density))));
        }

        return lines;
    }

    // Made while the answer is written, so that a sheet of hundreds of thousands of pieces never stands in memory twice.
    private static IEnumerable<SheetPieceResponse> PiecesOf(TreatmentSheet sheet, SheetRequest request)
    {
        var at = 0;
        foreach (var index in sheet.Treatment.OnLines)
        {
            var line = request.Pile.Lines[index];
            for (var piece = 0; piece < line.WeighedGrams.Count; piece++, at++)
            {
                yield return new SheetPieceResponse(
                    sheet.PieceIndexes[at] + 1,
                    line.Id,
                    line.Labels?[piece],
                    Weight(line.WeighedGrams[piece] * line.GreenPerWeighed, request.Step),
                    Amount(sheet.PieceSteps[at], request.Step));
            }
        }
    }

    private static Quantity Amount(long steps, WeighingStep step) => new(step.ValueOf(steps), step.Unit.Symbol);
}
