using RubLab.Core.Quantities;
using RubLab.Core.Yields;

namespace RubLab.Core.Serving;

/// <summary>How many portions a weight of meat comes to.</summary>
/// <param name="EdibleGrams">Cooked meat without bone.</param>
/// <param name="CookedGrams">Cooked weight with bone; none where the yield skips it.</param>
/// <param name="Low">Whole portions at the low end.</param>
/// <param name="Typical">Whole portions, typically.</param>
/// <param name="High">Whole portions at the high end.</param>
public sealed record PortionCount(Band EdibleGrams, Band? CookedGrams, long Low, long Typical, long High)
{
    /// <summary>Counts the portions; servings round down.</summary>
    /// <param name="grams">The weight the yield is of: as bought, or trimmed where its trim is none.</param>
    /// <param name="yield">What becomes of it.</param>
    /// <param name="portionGrams">One portion, above zero.</param>
    public static PortionCount Of(double grams, EdibleYield yield, double portionGrams)
    {
        var edible = yield.EdiblePerPurchase.Times(grams);
        return new PortionCount(
            edible, yield.CookedPerPurchase?.Times(grams), BuyingGuide.Servings(edible.Low, portionGrams),
            BuyingGuide.Servings(edible.Typical, portionGrams), BuyingGuide.Servings(edible.High, portionGrams));
    }
}
