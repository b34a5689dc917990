using RubLab.Core.Serving;

namespace RubLab.Core.Shopping;

/// <summary>Whole packs for what is needed beyond the stock.</summary>
/// <param name="ToBuyGrams">Needed less what is on hand, not below zero.</param>
/// <param name="Count">Whole packs, up; none without a pack size.</param>
/// <param name="LeftGrams">On hand afterwards: stock and packs less what was needed.</param>
public readonly record struct Packs(double ToBuyGrams, long? Count, double LeftGrams)
{
    /// <summary>Counts the packs.</summary>
    /// <param name="neededGrams">Not below zero.</param>
    /// <param name="stockGrams">Not below zero.</param>
    /// <param name="packGrams">Above zero; none where it is bought loose, to the gram.</param>
    public static Packs For(double neededGrams, double stockGrams, double? packGrams)
    {
        var toBuy = Math.Max(0, neededGrams - stockGrams);
        long? count = packGrams is { } pack ? BuyingGuide.Up(toBuy / pack) : null;
        var bought = count * packGrams ?? toBuy;
        return new Packs(toBuy, count, Math.Max(0, stockGrams + bought - neededGrams));
    }
}
