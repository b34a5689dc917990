using RubLab.Core.Sources;

namespace RubLab.Core.Ingredients;

/// <summary>A flow class of USP chapter 1174, with the house's bounds where the printed ones leave gaps.</summary>
/// <param name="Id">The class in kebab-case.</param>
/// <param name="Name">The class as printed.</param>
/// <param name="LowestCarrPercent">Belongs to the class.</param>
/// <param name="HighestCarrPercent">Belongs to the next.</param>
/// <param name="Citation">Source and locator.</param>
public sealed record PowderFlow(string Id, string Name, double LowestCarrPercent, double HighestCarrPercent, Citation Citation)
{
    /// <summary>Compressibility index: what tapping takes off the volume, percent.</summary>
    public static double CarrPercent(double bulk, double tapped) => 100 * (tapped - bulk) / tapped;

    /// <summary>Hausner ratio: tapped over bulk density.</summary>
    public static double Hausner(double bulk, double tapped) => tapped / bulk;

    /// <summary>The class of a powder; none for a tapped density below the bulk density.</summary>
    public static PowderFlow? Of(double bulk, double tapped, IReadOnlyList<PowderFlow> classes)
    {
        var carr = CarrPercent(bulk, tapped);
        foreach (var one in classes)
        {
            if (carr >= one.LowestCarrPercent && carr < one.HighestCarrPercent)
            {
                return one;
            }
        }

        return null;
    }
}
