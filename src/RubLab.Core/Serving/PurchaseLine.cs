using RubLab.Core.Quantities;

namespace RubLab.Core.Serving;

/// <summary>What to buy of one cut, and what it comes to.</summary>
public sealed record PurchaseLine
{
    public required MenuLine Line { get; init; }

    /// <summary>Of this cut for one guest, in the mean.</summary>
    public required double PortionGrams { get; init; }

    /// <summary>What the guests eat of it.</summary>
    public required double EatenGrams { get; init; }

    /// <summary>What is to be there, edible, with the reserve.</summary>
    public required double EdibleNeededGrams { get; init; }

    /// <summary>Cooked weight for that, with bone; none where the yield skips it.</summary>
    public required Band? CookedNeededGrams { get; init; }

    /// <summary>Trimmed weight for that; none where the yield skips it.</summary>
    public required Band? GreenNeededGrams { get; init; }

    /// <summary>Purchase weight for that, before it is rounded up.</summary>
    public required Band PurchaseNeededGrams { get; init; }

    /// <summary>Whole pieces, of the heaviest, of typical ones and of the lightest; none for meat bought by weight.</summary>
    public required (long Low, long Typical, long High)? Pieces { get; init; }

    /// <summary>The weight to buy: that of the typical pieces, or the weight asked for.</summary>
    public required double BoughtGrams { get; init; }

    /// <summary>Cooked meat without bone from what is bought.</summary>
    public required Band EdibleGrams { get; init; }

    /// <summary>Purchase weight at the safe end.</summary>
    public required double SafeGrams { get; init; }

    /// <summary>Purchase units for 100 portions, up to the next step.</summary>
    public required double UnitsPerHundred { get; init; }

    /// <summary>Edible meat beyond what the guests eat.</summary>
    public Band LeftOverGrams => new(
        Math.Max(0, EdibleGrams.Low - EatenGrams), Math.Max(0, EdibleGrams.Typical - EatenGrams), Math.Max(0, EdibleGrams.High - EatenGrams));

    /// <summary>Edible meat that is missing for what the guests eat.</summary>
    public Band ShortfallGrams => new(
        Math.Max(0, EatenGrams - EdibleGrams.High), Math.Max(0, EatenGrams - EdibleGrams.Typical), Math.Max(0, EatenGrams - EdibleGrams.Low));

    /// <summary>Portions of this cut at the low end, typically and at the high end, whole ones.</summary>
    public (long Low, long Typical, long High) Portions => (
        BuyingGuide.Servings(EdibleGrams.Low, PortionGrams), BuyingGuide.Servings(EdibleGrams.Typical, PortionGrams),
        BuyingGuide.Servings(EdibleGrams.High, PortionGrams));

    /// <summary>What it costs at the typical weight, not rounded; none without a price.</summary>
    public decimal? Cost => Line.Price?.Of(BoughtGrams, Pieces?.Typical ?? 0);
}
