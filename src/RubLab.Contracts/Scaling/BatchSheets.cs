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
        CheckSize(lines, at);
        var findings = new FindingLog(catalogue);
        var stack = log.Faults.Any(f => f.Code == "too-many")
            ? null
            : Stack.Read(lines, request.Treatments, catalogue, formulas, findings, at);
        if (stack is not null)
        {
            CheckSize(stack, at);
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

        return Reader.Amount(step, at, Bounds.StepGrams, isRequired: true, Dimension.Mass) is null
            ? null
            : new WeighingStep(step.Value!.Value, UnitTable.Get(step.Unit!));
    }

    private static void CheckSize(IReadOnlyList<PileLine?> lines, Place at) => CheckSize(lines.Sum(l => (long)(l?.WeighedGrams.Count ?? 0)), at, "pieces");

    private static void CheckSize(Stack stack, Place at) => CheckSize(
        stack.Treatments.Sum(t => t.OnLines.Sum(line => (long)stack.Pile.Lines[line].WeighedGrams.Count)), at, "piece-treatments");

    private static void CheckSize(long count, Place at, string what)
    {
        if (count > SheetRequest.MostPieceTreatments)
        {
            at.At("pile").Fault(
                "too-many", $"A sheet has at most {SheetRequest.MostPieceTreatments} {what}; this has {count}. Split the pile.",
                ("most", (double)SheetRequest.MostPieceTreatments), ("count", (double)count));
        }
    }
}
