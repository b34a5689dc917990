using RubLab.Contracts.Quantities;
using RubLab.Contracts.Scaling;
using RubLab.Core.Catalogues;
using RubLab.Core.Remarks;
using RubLab.Core.Scaling;
using RubLab.Core.Serving;
using RubLab.Core.Shopping;

namespace RubLab.Contracts.Shopping;

/// <summary>Writes a shopping list in the words of the wire.</summary>
internal sealed class ShoppingWriter(Currency? currency, Catalogue catalogue)
{
    public ShoppingItemResponse Item(MixTotal mix, Pack? pack, double stock)
    {
        catalogue.TryFindIngredient(mix.Ingredient, out var ingredient);
        ingredient!.TryFindForm(mix.Form, out var form);
        var packs = Packs.For(mix.Grams, stock, pack?.Grams);
        return new ShoppingItemResponse
        {
            Ingredient = mix.Ingredient,
            Form = mix.Form,
            Needed = Grams(mix.Grams),
            Spoon = SpoonResponse.From(SpoonMeasure.Of(mix.Grams, form!.Density)),
            Stock = stock > 0 ? Grams(stock) : null,
            ToBuy = Grams(packs.ToBuyGrams),
            Packs = packs.Count,
            PackSize = pack?.Size,
            LeftOver = Grams(packs.LeftGrams),
            Outlay = Money(pack?.Price * packs.Count),
            Used = Money(pack?.Price * (decimal)(mix.Grams / (pack?.Grams ?? 1))),
        };
    }

    public List<ShoppingMeatResponse> Meat(List<PurchasePlan> plans) => plans.SelectMany(p => p.Lines)
        .GroupBy(l => l.Line.Cut.Id)
        .Select(lines => new ShoppingMeatResponse(
            lines.Key,
            lines.All(l => l.Pieces is not null) ? lines.Sum(l => l.Pieces!.Value.Typical) : null,
            Grams(lines.Sum(l => l.BoughtGrams)),
            lines.All(l => l.Cost is not null) ? Money(lines.Sum(l => currency!.Rounded(l.Cost!.Value))) : null))
        .ToList();

    public MoneyResponse? Outlay(List<ShoppingItemResponse> items, List<ShoppingMeatResponse> meat) =>
        Sum(items.Select(i => i.Outlay).Concat(meat.Select(m => m.Outlay)));

    public CostResponse? Used(List<ShoppingItemResponse> items, List<ShoppingMeatResponse> meat, long portions, long pieces, double grams) =>
        Sum(items.Select(i => i.Used).Concat(meat.Select(m => m.Outlay))) is { } total
            ? CostResponse.From(Cost.Of(currency!, total.Amount, portions, pieces, grams))
            : null;

    /// <summary>Notes what the cost leaves out, once something has a price.</summary>
    public void NoticeUnpriced(List<ShoppingItemResponse> items, List<ShoppingMeatResponse> meat, FindingLog findings)
    {
        var ingredients = items.Where(i => i.Used is null).ToList();
        var cuts = meat.Where(m => m.Outlay is null).Select(m => m.Cut).ToList();
        if (currency is not null && ingredients.Count + cuts.Count > 0)
        {
            string[] unpriced = [.. ingredients.Select(i => $"{i.Ingredient} ({i.Form})"), .. cuts];
            findings.Add("not-priced", null, null, ("items", new Said(unpriced, string.Join("; ", ingredients.Select(Name).Concat(cuts.Select(Name))))));
        }
    }

    private string Name(ShoppingItemResponse item) =>
        catalogue.TryFindIngredient(item.Ingredient, out var ingredient) && ingredient.TryFindForm(item.Form, out var form)
            ? $"{ingredient.Name} ({form.Name})"
            : item.Ingredient;

    private string Name(string cutId) => catalogue.TryFindCut(cutId, out var cut) ? cut.Name : cutId;

    private MoneyResponse? Sum(IEnumerable<MoneyResponse?> sums)
    {
        var known = sums.OfType<MoneyResponse>().ToList();
        return known.Count > 0 ? Money(known.Sum(m => m.Amount)) : null;
    }

    private MoneyResponse? Money(decimal? amount) => amount is { } known ? new MoneyResponse(currency!.Rounded(known), currency.Code) : null;

    private static Quantity Grams(double grams) => new(Rounded.Exact(grams), "g");
}
