using RubLab.Contracts.Reading;
using RubLab.Contracts.Remarks;
using RubLab.Contracts.Scaling;
using RubLab.Contracts.Yields;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Salt;

namespace RubLab.Contracts.Salt;

/// <summary>Computes a salt check from what was posted.</summary>
public static class SaltChecks
{
    public static Result<SaltCheckResponse> Compute(SaltCheckRequest request, Catalogue catalogue, FormulaLookup formulas)
    {
        var log = new FaultLog();
        var at = log.Root;
        var portion = Reader.Amount(request.Portion, at.At("portion"), Bounds.PortionGrams, isRequired: false, Dimension.Mass);
        if (request.Pile is { Count: > 1 })
        {
            at.At("pile").Fault("too-many", "A salt check is of one pile line; post a batch sheet for several.", ("most", 1d), ("count", (double)request.Pile.Count));
        }

        var lines = new PileReader(catalogue, portion, needsWeights: false).Read(request.Pile, at.At("pile"));
        var findings = new FindingLog(catalogue);
        var stack = Stack.Read(lines, request.Treatments, null, catalogue, formulas, findings, at);
        if (stack is null || !log.IsClean)
        {
            return log.ResultOf<SaltCheckResponse>(null);
        }

        stack.NoticeAssumptions(catalogue, findings);
        OwnYieldFindings.Notice(stack.Pile, request.Pile!, findings);
        var ledger = SaltLedger.Of(stack.Pile, 0, stack.Treatments, isWeighed: false);
        return log.ResultOf(new SaltCheckResponse(
            SaltLedgerResponse.From(ledger, stack.LimitsOf(0, isWeighed: false, catalogue), catalogue, findings, "/pile/0"),
            FindingResponse.From(findings),
            stack.CautionsOf(catalogue),
            catalogue.Version));
    }
}
