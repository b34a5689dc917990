using RubLab.Core.Formulas;

namespace RubLab.Core.Scaling;

/// <summary>How much of a formula's base a kilogram of green weight is.</summary>
public static class BaseWeight
{
    /// <summary>Kilograms of the base per kilogram green; none where the pile does not say enough.</summary>
    public static double? PerGreen(FormulaRatios ratios, PileLine line, double greenGrams) => ratios.Formula.Base switch
    {
        RatioBase.Green => ratios.RatiosAreOf == WeightBasis.Purchase ? 1 / PurchaseToGreen(line) : 1,
        RatioBase.Cooked => line.YieldCountedPercent?.Typical / 100,
        RatioBase.Portion => ServedPerGreen(line, greenGrams),
        _ => null,
    };

    // An old card's amounts were for meat as bought. Where this meat was weighed green, its own trim is unknown and
    // the cut's typical trim stands in.
    private static double PurchaseToGreen(PileLine line) => line.WeightIs == WeightBasis.Purchase
        ? line.GreenPerWeighed
        : 1 - ((line.Cut.TrimLossPercent?.Band.Typical ?? 0) / 100);

    private static double? ServedPerGreen(PileLine line, double greenGrams)
    {
        if (line.PortionGrams is not { } portion || line.YieldCountedPercent is not { } yield)
        {
            return null;
        }

        var ediblePerGreen = line.EdiblePerGreen(yield.Typical);
        return greenGrams > 0 ? Math.Floor(ediblePerGreen * greenGrams / portion) * portion / greenGrams : ediblePerGreen;
    }
}
