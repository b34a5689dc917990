using RubLab.Core.Quantities;

namespace RubLab.Core.Brining;

/// <summary>The strength of a soak that reaches a level of salt in the meat.</summary>
public static class SoakTarget
{
    private const int Halvings = 60;

    /// <summary>The share of the free line at which the typical salt in the meat is the target.</summary>
    /// <param name="soakAt">The soak at a share of the free line, 0 up to <paramref name="highest"/>; its salt rises with the share.</param>
    /// <param name="highest">The largest share that dissolves.</param>
    /// <param name="gramsPerKilogram">Sodium chloride to reach, per kilogram of green meat.</param>
    /// <param name="reachable">Takes the levels at both ends.</param>
    /// <returns>The share; none where the target lies outside the levels at the ends.</returns>
    public static double? ShareFor(Func<double, Soak> soakAt, double highest, double gramsPerKilogram, out Band reachable)
    {
        double low = 0, high = highest;
        var least = soakAt(low).SaltGramsPerKilogram.Typical;
        var most = Math.Max(least, soakAt(high).SaltGramsPerKilogram.Typical);
        reachable = new Band(least, least, most);
        if (gramsPerKilogram < least || gramsPerKilogram > most)
        {
            return null;
        }

        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            if (soakAt(middle).SaltGramsPerKilogram.Typical < gramsPerKilogram)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return high;
    }
}
