using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Contracts.Scaling;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Serving;

namespace RubLab.Contracts.Serving;

/// <summary>Makes the body of a batch sheet from a plan, and tries it so that it works as posted.</summary>
internal static class PlanSheet
{
    // Stands in where the plan could not be read, so that the formulas' faults are told with the rest.
    private const double StandInGrams = 1000;

    /// <summary>The body and the sheet it makes; none where the menu names no formula, or something is wrong.</summary>
    public static (PlannedSheet Body, BatchSheetResponse Sheet)? Make(
        PurchasePlan? plan, IReadOnlyList<MenuLineRequest?>? menu, Catalogue catalogue, FormulaLookup formulas, Place at)
    {
        if (menu is null || menu.All(line => line?.Formulas is not { Count: > 0 }))
        {
            return null;
        }

        var ids = menu.Select((line, i) => plan?.Lines[i].Line.Id ?? $"line-{i}").ToList();
        var treatments = Treatments(menu, ids, at, out var origins);
        var pile = menu.Select((_, i) => plan is null ? StandIn(ids[i], i, menu, catalogue) : Line(plan.Lines[i])).ToList();
        var tried = BatchSheets.Compute(
            new BatchSheetRequest { Pile = pile, Treatments = treatments.ConvertAll(t => t.Request), Pieces = "none" }, catalogue, formulas);
        if (!tried.IsGood)
        {
            Forward(tried.Log, origins, isWhole: plan is not null, at);
            return null;
        }

        return plan is null ? null : (new PlannedSheet(plan.Lines.Select(Planned).ToList(), treatments.ConvertAll(t => t.Planned)), tried.Value);
    }

    private static List<(TreatmentRequest Request, PlannedTreatment Planned)> Treatments(
        IReadOnlyList<MenuLineRequest?> menu, List<string> ids, Place at, out List<Place> origins)
    {
        var on = new Dictionary<MenuFormulaRequest, List<string>>();
        var first = new Dictionary<MenuFormulaRequest, Place>();
        for (var i = 0; i < menu.Count; i++)
        {
            for (var j = 0; j < menu[i]?.Formulas?.Count; j++)
            {
                var place = at.At("menu").At(i).At("formulas").At(j);
                if (menu[i]!.Formulas![j] is not { } formula)
                {
                    Reader.Missing(place);
                    continue;
                }

                if (formula.FormulaId is null)
                {
                    Reader.Missing(place.At("formulaId"));
                    continue;
                }

                // The same formula in the same way on several cuts is one mix.
                first.TryAdd(formula, place);
                if (!on.TryAdd(formula, [ids[i]]))
                {
                    on[formula].Add(ids[i]);
                }
            }
        }

        origins = on.Keys.Select(f => first[f]).ToList();
        return on.Select(pair => (ToRequest(pair.Key, pair.Value), ToPlanned(pair.Key, pair.Value))).ToList();
    }

    private static TreatmentRequest ToRequest(MenuFormulaRequest formula, List<string> on) => new()
    {
        FormulaId = formula.FormulaId, Revision = formula.Revision, Dose = formula.Dose, Retained = formula.Retained, On = on,
    };

    private static PlannedTreatment ToPlanned(MenuFormulaRequest formula, List<string> on) => new()
    {
        FormulaId = formula.FormulaId!,
        Revision = formula.Revision,
        On = on,
        Dose = formula.Dose is { Value: { } dose, Unit: { } unit } ? new Quantity(dose, unit) : null,
        Retained = formula.Retained is { Unit: { } percent } kept ? new EstimateResponse(kept.Value, kept.Low, kept.Typical, kept.High, percent) : null,
    };

    private static PileLineRequest Line(PurchaseLine line)
    {
        var planned = Planned(line);
        return new PileLineRequest
        {
            Id = planned.Id,
            Cut = planned.Cut,
            Count = planned.Count,
            WeightEach = QuantityRequest.Of(planned.WeightEach.Value, planned.WeightEach.Unit),
            WeightIs = planned.WeightIs,
            Portion = planned.Portion is { } portion ? QuantityRequest.Of(portion.Value, portion.Unit) : null,
        };
    }

    // Meat bought by weight is one piece, or as many as keep each within what a piece may weigh.
    private static PlannedPileLine Planned(PurchaseLine line)
    {
        var count = line.Pieces?.Typical ?? BuyingGuide.Up(line.BoughtGrams / Bounds.MeatGrams.Highest);
        var portion = Rounded.Weight(line.PortionGrams);
        return new PlannedPileLine(
            line.Line.Id, line.Line.Cut.Id, (int)Math.Min(count, int.MaxValue), new Quantity(Rounded.Exact(line.BoughtGrams / count), "g"),
            Vocabulary.Weights[WeightBasis.Purchase], Bounds.PortionGrams.Holds(portion) ? new Quantity(portion, "g") : null);
    }

    private static PileLineRequest StandIn(string id, int index, IReadOnlyList<MenuLineRequest?> menu, Catalogue catalogue) => new()
    {
        Id = id,
        Cut = menu[index]?.Cut is { } cut && catalogue.TryFindCut(cut, out _) ? cut : catalogue.Cuts[0].Id,
        Count = 1,
        WeightEach = QuantityRequest.Of(StandInGrams, "g"),
    };

    // A fault of the sheet is told where the menu has what it is about.
    private static void Forward(FaultLog tried, List<Place> origins, bool isWhole, Place at)
    {
        foreach (var fault in tried.Faults)
        {
            var parts = fault.Pointer.Split('/').Skip(1).ToArray();
            var hasIndex = parts.Length > 1 && int.TryParse(parts[1], out _);
            if (parts is ["treatments", ..] && (isWhole || fault.Code != "base-unknown"))
            {
                var place = hasIndex ? origins[int.Parse(parts[1], System.Globalization.CultureInfo.InvariantCulture)] : at.At("menu");
                fault.NoteAt(parts.Skip(2).Aggregate(place, (p, part) => p.At(part)));
            }
            else if (isWhole)
            {
                fault.NoteAt(hasIndex ? at.At("menu").At(int.Parse(parts[1], System.Globalization.CultureInfo.InvariantCulture)) : at.At("menu"));
            }
        }
    }
}
