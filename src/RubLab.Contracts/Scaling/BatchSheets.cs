using System.Globalization;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Contracts.Remarks;
using RubLab.Contracts.Salt;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Salt;
using RubLab.Core.Scaling;

namespace RubLab.Contracts.Scaling;

/// <summary>Computes a batch sheet from what was posted.</summary>
public static class BatchSheets
{
    // Fifteen digits fit a double: nine for the number of steps and six for the step itself, so that every amount
    // printed is whole steps and the printed amounts add up. Both are far beyond any kitchen's scale.
    private const double MostSteps = 1e9;
    private const int StepDigits = 6;

    public static Result<BatchSheetResponse> Compute(BatchSheetRequest request, Catalogue catalogue, FormulaLookup formulas)
    {
        var log = new FaultLog();
        var at = log.Root;
        var step = ReadStep(request.WeighingStep, at.At("weighingStep"));
        var overage = Reader.Percent(request.Overage, at.At("overage"), Bounds.OveragePercent) ?? 0;
        var portion = Reader.Amount(request.Portion, at.At("portion"), Bounds.PortionGrams, isRequired: false, Dimension.Mass);
        var listing = Vocabulary.Listings.Read(request.Pieces, at.At("pieces"), PieceListing.All);
        var purpose = Vocabulary.Purposes.Read(request.Purpose, at.At("purpose"), SheetPurpose.Sheet);
        var lines = new PileReader(catalogue, portion, needsWeights: true).Read(request.Pile, at.At("pile"));
        var findings = new FindingLog(catalogue);
        var stack = Stack.Read(lines, request.Treatments, catalogue, formulas, findings, at);
        if (stack is not null && step is not null && log.IsClean)
        {
            CheckSize(stack, at.At("pile"));
            CheckSteps(stack, step, at.At("weighingStep"));
        }

        if (stack is null || step is null || !log.IsClean)
        {
            return log.ResultOf<BatchSheetResponse>(null);
        }

        var sheet = BatchSheet.Compute(new SheetRequest
        {
            Pile = stack.Pile,
            Treatments = stack.Treatments,
            Step = step,
            OveragePercent = overage,
        });
        stack.NoticeAssumptions(findings);
        if (purpose == SheetPurpose.Sheet)
        {
            sheet.NoticeCoarseSteps(catalogue, findings, t => $"/treatments/{t}");
        }

        return log.ResultOf(new BatchSheetResponse
        {
            Status = stack.Pile.IsWeighed ? "weighed" : "planned",
            GreenWeight = SheetWriter.Weight(stack.Pile.GreenGrams, step),
            PieceCount = stack.Treatments.Sum(t => t.OnLines.Sum(line => stack.Pile.Lines[line].WeighedGrams.Count)),
            Treatments = purpose == SheetPurpose.Check ? [] : SheetWriter.Treatments(sheet, listing == PieceListing.All),
            Salt = Enumerable.Range(0, stack.Pile.Lines.Count).Select(i => new LineLedgerResponse(
                stack.Pile.Lines[i].Id,
                SaltLedgerResponse.From(SaltLedger.Of(stack.Pile, i, stack.Treatments, isWeighed: true), catalogue))).ToList(),
            Findings = FindingResponse.From(findings),
            Cautions = CautionResponse.From(stack.CautionsOf(catalogue)),
            DataVersion = catalogue.Version,
        });
    }

    private static WeighingStep? ReadStep(QuantityRequest? step, Place at)
    {
        if (step is null)
        {
            return WeighingStep.Default;
        }

        if (Reader.Amount(step, at, Bounds.StepGrams, isRequired: true, Dimension.Mass) is null)
        {
            return null;
        }

        var value = step.Value!.Value;
        if (double.Parse(value.ToString($"G{StepDigits}", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) == value)
        {
            return new WeighingStep(value, UnitTable.Get(step.Unit!));
        }

        at.At("value").Fault(
            "too-many-digits", $"A weighing step is what a scale shows, such as 1, 0.1 or 0.05: at most {StepDigits} digits.",
            ("value", value), ("most", (double)StepDigits));
        return null;
    }

    private static void CheckSize(Stack stack, Place at)
    {
        var count = stack.Treatments.Sum(t => t.OnLines.Sum(line => (long)stack.Pile.Lines[line].WeighedGrams.Count));
        if (count > SheetRequest.MostPieceTreatments)
        {
            at.Fault(
                "too-many",
                $"A sheet has at most {SheetRequest.MostPieceTreatments} pieces times treatments; this has {count}. Split the pile.",
                ("most", (double)SheetRequest.MostPieceTreatments), ("count", (double)count));
        }
    }

    private static void CheckSteps(Stack stack, WeighingStep step, Place at)
    {
        var most = stack.Treatments.Max(t => stack.Pile.GreenGrams / 1000 * t.DoseCounted * t.Applications / step.Grams);
        if (most > MostSteps)
        {
            at.Fault(
                "step-too-fine", $"This batch would be more than {MostSteps:0} steps of {step.Value} {step.Unit.Symbol}: give a coarser step.",
                ("most", MostSteps), ("unit", step.Unit.Symbol));
        }
    }
}
