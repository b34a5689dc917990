using RubLab.Contracts.Reading;
using RubLab.Contracts.Remarks;
using RubLab.Contracts.Salt;
using RubLab.Contracts.Yields;
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
    // With the six digits of a step (ScaleReader) these fit a double: every amount printed is whole steps.
    private const double MostSteps = 1e9;
    private const int MostBowls = 1000;

    public static Result<BatchSheetResponse> Compute(BatchSheetRequest request, Catalogue catalogue, FormulaLookup formulas)
    {
        var log = new FaultLog();
        var at = log.Root;
        var scales = ScaleReader.Read(request, at);
        var bowl = ScaleReader.ReadBowl(request.Bowl, at.At("bowl"));
        var cooker = Reader.Amount(request.CookerTemperature, at.At("cookerTemperature"), Bounds.CookerCelsius, isRequired: false, Dimension.Temperature);
        var overage = Reader.Percent(request.Overage, at.At("overage"), Bounds.OveragePercent) ?? 0;
        var portion = Reader.Amount(request.Portion, at.At("portion"), Bounds.PortionGrams, isRequired: false, Dimension.Mass);
        var listing = Vocabulary.Listings.Read(request.Pieces, at.At("pieces"), PieceListing.All);
        var purpose = Vocabulary.Purposes.Read(request.Purpose, at.At("purpose"), SheetPurpose.Sheet);
        var lines = new PileReader(catalogue, portion, needsWeights: true).Read(request.Pile, at.At("pile"));
        var findings = new FindingLog(catalogue);
        var stack = Stack.Read(lines, request.Treatments, cooker, catalogue, formulas, findings, at);
        if (stack is not null && scales is not null && log.IsClean)
        {
            CheckSize(stack, at.At("pile"));
            CheckPortions(stack, request, at);
            CheckSteps(stack, scales.Finest.Step, at.At(request.Scales is null ? "weighingStep" : "scales"));
        }

        if (stack is null || scales is null || !log.IsClean)
        {
            return log.ResultOf<BatchSheetResponse>(null);
        }

        var sheet = BatchSheet.Compute(new SheetRequest
        {
            Pile = stack.Pile,
            Treatments = stack.Treatments,
            Scales = scales,
            OveragePercent = overage,
            BowlGrams = bowl,
        });
        stack.NoticeAssumptions(catalogue, findings);
        OwnYieldFindings.Notice(stack.Pile, request.Pile!, findings);
        if (purpose == SheetPurpose.Sheet)
        {
            SheetFindings.Notice(sheet, catalogue, findings, t => $"/treatments/{t}");
        }

        var limits = Enumerable.Range(0, stack.Pile.Lines.Count).Select(i => stack.LimitsOf(i, isWeighed: true, catalogue, purpose == SheetPurpose.Sheet ? sheet : null)).ToList();
        if (purpose == SheetPurpose.Sheet)
        {
            stack.RefuseExceeded(limits, t => at.At("treatments").At(t).At(request.Treatments![t]!.Formula is null ? "formulaId" : "formula"));
        }

        CheckCapacity(sheet, at.At("scales"));
        if (sheet.Treatments.Any(t => t.BowlCount > MostBowls))
        {
            at.At("bowl").Fault("capacity-too-small", $"This would take more than {MostBowls} bowls: give a larger one.", ("most", (double)MostBowls));
        }

        if (!log.IsClean)
        {
            return log.ResultOf<BatchSheetResponse>(null);
        }

        var salt = Enumerable.Range(0, stack.Pile.Lines.Count).Select(i => new LineLedgerResponse(
            stack.Pile.Lines[i].Id,
            SaltLedgerResponse.From(SaltLedger.Of(stack.Pile, i, stack.Treatments, isWeighed: true), limits[i], catalogue, findings, $"/pile/{i}"))).ToList();
        return log.ResultOf(new BatchSheetResponse
        {
            Status = stack.Pile.IsWeighed ? "weighed" : "planned",
            GreenWeight = SheetWriter.Weight(stack.Pile.GreenGrams, scales.Finest.Step),
            PieceCount = stack.Treatments.Sum(t => t.OnLines.Sum(line => stack.Pile.Lines[line].WeighedGrams.Count)),
            Treatments = purpose == SheetPurpose.Check ? [] : SheetWriter.Treatments(sheet, listing == PieceListing.All),
            Salt = salt,
            Findings = FindingResponse.From(findings),
            Cautions = stack.CautionsOf(catalogue),
            DataVersion = catalogue.Version,
        });
    }

    private static void CheckPortions(Stack stack, BatchSheetRequest request, Place at)
    {
        for (var i = 0; i < stack.Pile.Lines.Count; i++)
        {
            if (stack.Pile.Lines[i].PortionGrams > stack.Pile.GreenGrams)
            {
                (request.Pile![i]!.Portion is null ? at.At("portion") : at.At("pile").At(i).At("portion")).Fault(
                    "portion-too-large", "One portion weighs more than the whole pile.", ("pile", stack.Pile.GreenGrams), ("unit", "g"));
                return;
            }
        }
    }

    // A mix is weighed in several loads if need be; what goes on one piece is one load.
    private static void CheckCapacity(BatchSheet sheet, Place at)
    {
        var largest = sheet.Request.Scales.Largest;
        foreach (var treatment in sheet.Treatments)
        {
            if (treatment.Pieces.Steps.Any(steps => !largest.Takes(treatment.Pieces.Step.GramsOf(steps))))
            {
                at.Fault("capacity-too-small", "No scale takes what goes on one piece at once.", ("capacity", largest.CapacityGrams), ("unit", "g"));
                return;
            }
        }
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
        var most = stack.Treatments.Max(t => t.OnLines.Sum(line =>
            (BaseWeight.PerKilogramGreen(t.Ratios, stack.Pile, line) ?? 0) * stack.Pile.GreenGramsIn(line) / 1000) * t.DoseCounted * t.Applications / step.Grams);
        if (most > MostSteps)
        {
            at.Fault(
                "step-too-fine", $"This batch would be more than {MostSteps:0} steps of {step.Value} {step.Unit.Symbol}: give a coarser step.",
                ("most", MostSteps), ("unit", step.Unit.Symbol));
        }
    }
}
