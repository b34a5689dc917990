using RubLab.Contracts.Faults;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Contracts.Remarks;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Sources;

namespace RubLab.Contracts.Ingredients;

/// <summary>Converts amounts of ingredients between masses and volumes.</summary>
public static class Conversions
{
    public const int MostItems = 1000;

    /// <summary>One conversion; in a query the amount's value and unit stand beside the other members.</summary>
    public static Result<ConversionResponse> Compute(ConversionItemRequest request, Catalogue catalogue, bool isQuery = false)
    {
        var log = new FaultLog();
        return log.ResultOf(Convert(request, catalogue, log.Root, isQuery ? log.Root : log.Root.At("amount")));
    }

    /// <summary>A whole card at once. A fault in one item spoils that item alone.</summary>
    public static Result<ConversionsResponse> Compute(ConversionsRequest request, Catalogue catalogue)
    {
        var log = new FaultLog();
        var at = log.Root.At("items");
        var items = request.Items;
        if (!Listed.Holds(items, MostItems, "item", "items", at))
        {
            return log.ResultOf<ConversionsResponse>(null);
        }

        var answers = new List<ConversionItemResponse>(items.Count);
        for (var i = 0; i < items.Count; i++)
        {
            var own = new FaultLog();
            var place = own.Root.At("items").At(i);
            if (items[i] is not { } item)
            {
                Reader.Missing(place);
                answers.Add(new ConversionItemResponse(null, ErrorResponse.From(own)));
                continue;
            }

            var converted = Convert(item, catalogue, place, place.At("amount"));
            answers.Add(own.IsClean
                ? new ConversionItemResponse(converted, null)
                : new ConversionItemResponse(null, ErrorResponse.From(own)));
        }

        return log.ResultOf(new ConversionsResponse(answers));
    }

    private static ConversionResponse? Convert(ConversionItemRequest request, Catalogue catalogue, Place at, Place amountAt)
    {
        var ingredient = Lookup.Ingredient(request.Ingredient, catalogue, at.At("ingredient"));
        var form = Lookup.Form(request.Form, ingredient, at.At("form"));
        var amount = Reader.Amount(request.Amount, amountAt, Bounds.Conversion, isRequired: true, Dimension.Mass, Dimension.Volume);
        var to = Reader.Unit(request.To, at.At("to"), Dimension.Mass, Dimension.Volume);
        var faults = at.Log.Count;
        var size = GrindReader.Read(request.Mesh, request.Micrometres, request.Form is not null, catalogue, at);
        if (ingredient is null || amount is null || to is null || (request.Form is not null && form is null) || at.Log.Count > faults)
        {
            return null;
        }

        var sizeAt = at.At(request.Mesh is null ? "micrometres" : "mesh");
        DensityChoice? bySize = null;
        if (size is { } micrometres && (bySize = GrindReader.Choose(ingredient, micrometres, sizeAt)) is null)
        {
            return null;
        }

        var value = request.Amount!.Value!.Value;
        var from = UnitTable.Get(request.Amount.Unit!);
        var choose = () => bySize ?? DensityChoice.For(ingredient, form, catalogue.Constants.FormSpreadAsksPercent);
        if (Conversion.Of(value, from, to, choose) is not { } conversion)
        {
            var asked = form ?? ingredient.DefaultForm;
            at.At("form").Fault(
                "no-density",
                $"{ingredient.Name}, {asked.Name}: no density is known for this form, so a mass cannot be turned into a volume or back.",
                ("ingredient", ingredient.Id), ("form", asked.Id));
            return null;
        }

        var findings = new FindingLog(catalogue);
        Notice(ingredient, conversion, findings, at.At("form").Pointer);
        if (size is { } grain && bySize is not null)
        {
            NoticeSize(ingredient, bySize.Form, grain, findings, sizeAt.Pointer);
        }

        return new ConversionResponse
        {
            Ingredient = ingredient.Id,
            Form = (bySize?.Form ?? form ?? ingredient.DefaultForm).Id,
            Amount = new Quantity(value, from.Symbol),
            Result = QuantityBand.From(conversion.Amount, to.Symbol, conversion.Choice is null ? Rounded.Exact : Rounded.Estimate),
            Density = DensityResponse.From(conversion.Choice?.Density),
            Findings = FindingResponse.From(findings),
            DataVersion = catalogue.Version,
        };
    }

    private static void Notice(Ingredient ingredient, Conversion conversion, FindingLog findings, string pointer)
    {
        if (conversion.Choice is not { Density: { } density } choice)
        {
            return;
        }

        if (density.IsOwn)
        {
            findings.Add(
                "own-density-used", pointer, density.Citation.SourceId,
                ("ingredient", ingredient.Name), ("form", choice.Form.Name), ("density", Math.Round(density.GramsPerMillilitre.Typical, 3)),
                ("reference", density.ReferenceGramsPerMillilitre is { } reference ? Math.Round(reference, 3) : "none"));
        }
        else if (choice.SpansForms)
        {
            findings.Add(
                "form-unnamed", pointer, density.Citation.SourceId, ("ingredient", ingredient.Name),
                ("forms", ingredient.MeasurableForms()));
        }
        else if (density.Citation.Confidence >= Confidence.Low)
        {
            findings.Add(
                "density-low-confidence", pointer, density.Citation.SourceId,
                ("ingredient", ingredient.Name), ("form", choice.Form.Name));
        }
    }

    private static void NoticeSize(Ingredient ingredient, IngredientForm form, double micrometres, FindingLog findings, string pointer) => findings.Add(
        "form-by-size", pointer, form.Density?.Citation.SourceId,
        ("ingredient", ingredient.Name), ("size", micrometres), ("form", form.Name),
        ("low", form.SizeLowMicrometres!.Value), ("high", form.SizeHighMicrometres!.Value));
}
