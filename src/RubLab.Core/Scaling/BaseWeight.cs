using RubLab.Core.Formulas;

namespace RubLab.Core.Scaling;

/// <summary>How much of a formula's base a pile has: kilograms for a base by weight, hundreds of cm2 for one by area.</summary>
public static class BaseWeight
{
    /// <summary>The base of each piece of a line, dose factors not yet applied; none where the pile does not say enough.</summary>
    public static double[]? OfPieces(FormulaRatios ratios, Pile pile, int line)
    {
        var greens = pile.GreenGramsOf(line);
        var amounts = new double[greens.Length];
        if (ratios.Formula.Base == RatioBase.Area)
        {
            for (var piece = 0; piece < greens.Length; piece++)
            {
                if (pile.Lines[line].GeometryOf(piece, greens[piece]) is not { } geometry)
                {
                    return null;
                }

                amounts[piece] = geometry.SurfaceSquareCentimetres / 100;
            }

            return amounts;
        }

        if (PerGreen(ratios, pile, line) is not { } perGreen)
        {
            return null;
        }

        for (var piece = 0; piece < greens.Length; piece++)
        {
            amounts[piece] = perGreen * greens[piece] / 1000;
        }

        return amounts;
    }

    /// <summary>The base per kilogram of green weight, dose factors applied; none where the pile does not say enough.</summary>
    public static double? PerKilogramGreen(FormulaRatios ratios, Pile pile, int line)
    {
        if (ratios.Formula.Base != RatioBase.Area)
        {
            return PerGreen(ratios, pile, line) * pile.MeanDoseFactorOf(line);
        }

        if (pile.Lines[line].WeighedGrams.Count == 0 || OfPieces(ratios, pile, line) is not { } amounts)
        {
            return null;
        }

        double dosed = 0;
        var factors = pile.DoseFactorsOf(line);
        for (var piece = 0; piece < amounts.Length; piece++)
        {
            dosed += amounts[piece] * factors[piece];
        }

        return dosed / pile.GreenGramsIn(line) * 1000;
    }

    private static double? PerGreen(FormulaRatios ratios, Pile pile, int index)
    {
        var line = pile.Lines[index];
        return ratios.Formula.Base switch
        {
            RatioBase.Green => ratios.RatiosAreOf == WeightBasis.Purchase ? 1 / PurchaseToGreen(line) : 1,
            RatioBase.Cooked => line.YieldCountedPercent?.Typical / 100,
            RatioBase.Portion => ServedPerGreen(line, pile.GreenGramsIn(index)),
            _ => null,
        };
    }

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
