using RubLab.Contracts.Scaling;
using RubLab.Contracts.Shopping;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Remarks;
using RubLab.Core.Serving;

namespace RubLab.Contracts.Serving;

/// <summary>Plans a purchase from what was posted.</summary>
public static class PurchasePlans
{
    public static Result<PurchasePlanResponse> Compute(PurchasePlanRequest request, Catalogue catalogue, FormulaLookup formulas)
    {
        var log = new FaultLog();
        var money = new MoneyReader(catalogue.Serving);
        var plan = Read(request, catalogue, money, log.Root);
        var sheet = PlanSheet.Make(plan, request.Menu, catalogue, formulas, log.Root);
        if (plan is null || !log.IsClean)
        {
            return log.ResultOf<PurchasePlanResponse>(null);
        }

        var findings = new FindingLog(catalogue);
        PlanFindings.Notice(plan, request, catalogue, findings, log.Root);
        return log.ResultOf(PlanWriter.From(plan, request, money.Currency, sheet?.Body, findings, catalogue));
    }

    internal static PurchasePlan? Read(PurchasePlanRequest request, Catalogue catalogue, MoneyReader money, Place at) =>
        new PlanReader(catalogue, money).Read(request, at) is { } read ? PurchasePlan.Compute(read) : null;
}
