using RubLab.Contracts.Formulas;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
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
        var ingredients = treatment.Ratios.Lines.Select(l => l.Line.Ingredient).ToList();
        var unit = FormulaAnswers.UnitOf(formula.Base);
        var unitOfMix = request.Scales.Finest.Step.Unit;
        return new SheetTreatmentResponse
        {
            Name = formula.Name,
            Kind = Vocabulary.Kinds[formula.Kind],
            Dose = new Quantity(Rounded.Exact(treatment.DoseCounted), unit),
            Base = treatment.Ratios.RatiosAreOf == WeightBasis.Purchase ? "purchase" : Vocabulary.Bases[formula.Base],
            Applications = treatment.Applications,
            Stage = treatment.Stage is { } stage ? Vocabulary.Stages[stage] : null,
            OnMeat = Amount(sheet.Pieces.TotalSteps, sheet.Pieces.Step),
            ToMix = new Quantity((double)sheet.ToMix, unitOfMix.Symbol),
            BoilDownTo = formula.PercentLeft < 100 ? Weight((double)sheet.ToMix * unitOfMix.Factor * formula.PercentLeft / 100, request.Scales.Finest.Step) : null,
            Lines = LinesOf(sheet, unit, !request.Scales.IsSingle),
            Allergens = AllergenResponse.Of(ingredients),
            ReadYourLabel = ingredients.Where(i => i.IsGenericCompound).Select(i => i.Id).Distinct().ToList(),
            Bowls = sheet.BowlCount > 1 ? BowlsOf(sheet) : null,
            Coverage = CoverageOf(sheet, request),
            AddedSolution = formula.Kind == FormulaKind.Injection
                ? new Quantity(Rounded.Exact(UnitTable.Get("%").FromBase(treatment.DoseCounted * treatment.Applications)), "%")
                : null,
            Pieces = withPieces ? PiecesOf(sheet, request) : null,
        };
    }

    private static List<SheetLineResponse> LinesOf(TreatmentSheet sheet, string unit, bool withStep)
    {
        var lines = new List<SheetLineResponse>(sheet.Lines.Count);
        decimal running = 0;
        for (var i = 0; i < sheet.Lines.Count; i++)
        {
            var line = sheet.Treatment.Ratios.Lines[i];
            var amount = sheet.Lines[i];
            running += amount.Value;
            lines.Add(new SheetLineResponse(
                line.Line.Ingredient.Id,
                line.Line.Form.Id,
                new Quantity(Rounded.Exact(line.RatioGramsPerKilogram.Typical * sheet.Treatment.DoseScale), unit),
                new Quantity((double)amount.Value, amount.Step.Unit.Symbol),
                new Quantity((double)running, amount.Step.Unit.Symbol),
                withStep ? new Quantity(amount.Step.Value, amount.Step.Unit.Symbol) : null,
                amount.Weighings > 1 ? amount.Weighings : null,
                SpoonResponse.From(SpoonMeasure.Of(amount.Grams, line.Density))));
        }

        return lines;
    }

    private static List<BowlResponse> BowlsOf(TreatmentSheet sheet)
    {
        var bowls = new List<BowlResponse>(sheet.BowlCount);
        for (var bowl = 0; bowl < sheet.BowlCount; bowl++)
        {
            var symbol = sheet.Lines[0].Step.Unit.Symbol;
            var values = sheet.Lines.Select(l => l.ValueIn(bowl, sheet.BowlCount)).ToList();
            bowls.Add(new BowlResponse(
                bowl + 1, new Quantity((double)values.Sum(), symbol), values.Select(v => new Quantity((double)v, symbol)).ToList()));
        }

        return bowls;
    }

    private static List<CoverageResponse>? CoverageOf(TreatmentSheet sheet, SheetRequest request)
    {
        List<CoverageResponse>? all = null;
        foreach (var index in sheet.Treatment.OnLines)
        {
            if (Coverage.Of(sheet, request, index) is { } coverage)
            {
                var line = request.Pile.Lines[index];
                (all ??= []).Add(new CoverageResponse(
                    line.Id,
                    QuantityBand.From(coverage.GramsPerHundredSquareCentimetres, "g/100cm2", Rounded.Estimate),
                    coverage.LayerMillimetres is { } layer ? new Quantity(Rounded.Estimate(layer), "mm") : null,
                    coverage.GrainMillimetres is { } grain ? new Quantity(Rounded.Estimate(grain), "mm") : null,
                    line.Cut.Shape!.Citation.SourceId));
            }
        }

        return all;
    }

    // Made while the answer is written, so that a sheet of hundreds of thousands of pieces never stands in memory twice.
    private static IEnumerable<SheetPieceResponse> PiecesOf(TreatmentSheet sheet, SheetRequest request)
    {
        var at = 0;
        var isInjection = sheet.Treatment.Ratios.Formula.Kind == FormulaKind.Injection;
        foreach (var index in sheet.Treatment.OnLines)
        {
            var line = request.Pile.Lines[index];
            var first = request.Pile.FirstPieceOf(index) + 1;
            for (var piece = 0; piece < line.WeighedGrams.Count; piece++, at++)
            {
                var green = line.WeighedGrams[piece] * line.GreenPerWeighed;
                yield return new SheetPieceResponse(
                    first + piece,
                    line.Id,
                    line.Labels?[piece],
                    Weight(green, sheet.Pieces.Step),
                    Amount(sheet.Pieces.Steps[at], sheet.Pieces.Step),
                    isInjection ? Weight(green + sheet.Pieces.Step.GramsOf(sheet.Pieces.Steps[at]), sheet.Pieces.Step) : null,
                    isInjection && line.WeighedBackGrams?[piece] is { } back ? Weight(back, sheet.Pieces.Step) : null);
            }
        }
    }

    private static Quantity Amount(long steps, WeighingStep step) => new(step.ValueOf(steps), step.Unit.Symbol);
}
