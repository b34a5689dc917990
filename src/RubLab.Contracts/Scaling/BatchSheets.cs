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
    private enum Listing
    {
        All,
        None,
    }

    private enum Purpose
    {
        Sheet,
        Check,
    }

    private const double MostSteps = 1e10;

    private static readonly Words<Listing> Listings = new(("all", Listing.All), ("none", Listing.None));
    private static readonly Words<Purpose> Purposes = new(("sheet", Purpose.Sheet), ("check", Purpose.Check));

    public static Result<BatchSheetResponse> Compute(BatchSheetRequest request, Catalogue catalogue, FormulaLookup formulas)
    {
        var log = new FaultLog();
        var at = log.Root;
        var step = ReadStep(request.WeighingStep, at.At("weighingStep"));
        var overage = Reader.Percent(request.Overage, at.At("overage"), Bounds.OveragePercent) ?? 0;
        var portion = Reader.Amount(request.Portion, at.At("portion"), Bounds.PortionGrams, isRequired: false, Dimension.Mass);
        var listing = Listings.Read(request.Pieces, at.At("pieces"), Listing.All);
        var purpose = Purposes.Read(request.Purpose, at.At("purpose"), Purpose.Sheet);
        var pile = new PileReader(catalogue, portion, needsWeights: true);
        var lines = pile.Read(request.Pile, at.At("pile"));
        CheckSize(pile.PieceCount, at, "pieces");
        var findings = new FindingLog(catalogue);
        var stack = log.Faults.Any(f => f.Code == "too-many")
            ? null
            : Stack.Read(lines, request.Treatments, catalogue, formulas, findings, at);
        if (stack is not null)
        {
            CheckSize(stack, at);
        }

        var sheetRequest = stack is null || step is null
            ? null
            : new SheetRequest { Pile = stack.Pile, Treatments = stack.Treatments, Step = step, OveragePercent = overage };
        if (sheetRequest is not null)
        {
            CheckSteps(sheetRequest, at);
        }

        if (stack is null || step is null || sheetRequest is null || !log.IsClean)
        {
            return log.ResultOf<BatchSheetResponse>(null);
        }

        var sheet = BatchSheet.Compute(sheetRequest);
        stack.NoticeAssumptions(findings);
        if (purpose == Purpose.Sheet)
        {
            sheet.NoticeCoarseSteps(catalogue, findings, t => $"/treatments/{t}");
        }

        return log.ResultOf(new BatchSheetResponse
        {
            Status = stack.Pile.IsWeighed ? "weighed" : "planned",
            GreenWeight = SheetWriter.Weight(stack.Pile.GreenGrams, step),
            Treatments = purpose == Purpose.Check ? [] : SheetWriter.Treatments(sheet, listing == Listing.All),
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

    private static void CheckSize(Stack stack, Place at) => CheckSize(
        stack.Treatments.Sum(t => t.OnLines.Sum(line => (long)stack.Pile.Lines[line].WeighedGrams.Count)), at, "piece-treatments");

    // Beyond this the sum of 300,000 amounts is no longer exact to half a step, and whole steps would not add up.
    private static void CheckSteps(SheetRequest request, Place at)
    {
        for (var i = 0; i < request.Treatments.Count; i++)
        {
            var steps = StepsOf(request.Treatments[i], request);
            if (!(steps <= MostSteps))
            {
                at.At("weighingStep").Fault(
                    "too-many-steps",
                    $"Treatment {i + 1} comes to more than {MostSteps:0} weighing steps: give a coarser weighingStep, or less to weigh.",
                    ("treatment", (double)i), ("most", MostSteps));
            }
        }
    }

    private static double StepsOf(Treatment treatment, SheetRequest request)
    {
        double grams = 0;
        foreach (var index in treatment.OnLines)
        {
            double green = 0;
            foreach (var piece in request.Pile.GreenGramsOf(index))
            {
                green += piece;
            }

            var line = request.Pile.Lines[index];
            grams += green * request.Pile.MeanDoseFactorOf(index) * (BaseWeight.PerGreen(treatment.Ratios, line, green) ?? 0);
        }

        return grams * treatment.DoseCounted / 1000 * treatment.Applications * (1 + (request.OveragePercent / 100)) / request.Step.Grams;
    }

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
