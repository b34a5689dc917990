using RubLab.Api.Callers;
using RubLab.Contracts.Scaling;
using RubLab.Contracts.Serving;
using RubLab.Contracts.Shopping;
using RubLab.Storage;

namespace RubLab.Api.Formulas;

/// <summary>The stored formulas that plans and shopping lists name.</summary>
internal static class PlanFormulas
{
    public static List<TreatmentRequest?> Of(PurchasePlanRequest? plan) => (plan?.Menu ?? [])
        .SelectMany(line => line?.Formulas ?? [])
        .Select(f => f is null ? null : new TreatmentRequest { FormulaId = f.FormulaId, Revision = f.Revision })
        .ToList();

    /// <summary>Sheet by sheet and plan by plan: each names as many as one sheet may.</summary>
    public static async Task<FormulaLookup> FetchAsync(ShoppingListRequest request, Caller caller, Database database, CancellationToken cancellation)
    {
        var lookups = new List<FormulaLookup>();
        var sheets = (request.BatchSheets ?? []).Take(ShoppingLists.MostSheets).Select(s => s?.Treatments);
        var plans = (request.PurchasePlans ?? []).Take(ShoppingLists.MostPlans).Select(Of);
        foreach (var treatments in sheets.Concat(plans))
        {
            lookups.Add(await StoredFormulas.FetchAsync(treatments, caller, database, cancellation));
        }

        return (id, revision) => lookups.Select(lookup => lookup(id, revision)).FirstOrDefault(found => found is not null);
    }
}
