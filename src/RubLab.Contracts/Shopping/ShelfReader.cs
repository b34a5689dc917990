using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;

namespace RubLab.Contracts.Shopping;

/// <summary>Reads what ingredients are sold in and what is on hand.</summary>
internal sealed class ShelfReader(Catalogue catalogue, MoneyReader money)
{
    public Dictionary<(string Ingredient, string Form), Pack> Packs(IReadOnlyList<PackRequest?>? packs, Place at)
    {
        var read = new Dictionary<(string, string), Pack>();
        for (var i = 0; Fits(packs, at) && i < packs?.Count; i++)
        {
            if (packs[i] is not { } pack)
            {
                Reader.Missing(at.At(i));
                continue;
            }

            var form = Form(pack.Ingredient, pack.Form, at.At(i), out var ingredient);
            var grams = Grams(pack.Size, form, Bounds.PackGrams, at.At(i).At("size"));
            var price = money.Read(pack.Price, at.At(i).At("price"));
            if (form is not null && grams is { } known
                && !read.TryAdd((ingredient!.Id, form.Id), new Pack(known, new Quantity(pack.Size!.Value!.Value, pack.Size.Unit!), price)))
            {
                at.At(i).Fault("duplicate-id", $"{ingredient.Name}, {form.Name}, has a pack already: give one size.", ("value", $"{ingredient.Id}/{form.Id}"));
            }
        }

        return read;
    }

    public Dictionary<(string Ingredient, string Form), double> Stock(IReadOnlyList<StockRequest?>? stock, Place at)
    {
        var read = new Dictionary<(string, string), double>();
        for (var i = 0; Fits(stock, at) && i < stock?.Count; i++)
        {
            if (stock[i] is not { } item)
            {
                Reader.Missing(at.At(i));
                continue;
            }

            var form = Form(item.Ingredient, item.Form, at.At(i), out var ingredient);
            if (Grams(item.Amount, form, Bounds.PackGrams with { Lowest = 0 }, at.At(i).At("amount")) is { } grams && form is not null)
            {
                read[(ingredient!.Id, form.Id)] = read.GetValueOrDefault((ingredient.Id, form.Id)) + grams;
            }
        }

        return read;
    }

    private static bool Fits<T>(IReadOnlyList<T>? items, Place at)
    {
        if (items?.Count > ShoppingLists.MostPacks && at.Log.IsClean)
        {
            at.Fault("too-many", $"At most {ShoppingLists.MostPacks}; this has {items.Count}.", ("most", (double)ShoppingLists.MostPacks), ("count", (double)items.Count));
        }

        return items?.Count <= ShoppingLists.MostPacks;
    }

    private IngredientForm? Form(string? id, string? formId, Place at, out Ingredient? ingredient)
    {
        ingredient = Lookup.Ingredient(id, catalogue, at.At("ingredient"));
        return formId is null ? ingredient?.DefaultForm : Lookup.Form(formId, ingredient, at.At("form"));
    }

    // A volume counts as what it holds at the lightest filling, so that a pack surely holds what is counted on.
    private static double? Grams(QuantityRequest? quantity, IngredientForm? form, Bounds bounds, Place at)
    {
        if (quantity?.Unit is not { } symbol || !UnitTable.TryFind(symbol, out var unit) || unit.Dimension != Dimension.Volume)
        {
            return Reader.Amount(quantity, at, bounds, isRequired: true, Dimension.Mass, Dimension.Volume);
        }

        var volume = Reader.Amount(quantity, at, bounds with { Unit = "mL" }, isRequired: true, Dimension.Volume);
        if (form is { Density: null })
        {
            at.Fault("no-density", $"{form.Name}: no density is known, so give a weight.");
        }

        return volume * form?.Density?.GramsPerMillilitre.Low;
    }
}
