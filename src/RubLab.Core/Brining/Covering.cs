using RubLab.Core.Quantities;

namespace RubLab.Core.Brining;

/// <summary>The least liquid that covers meat in a vessel.</summary>
public static class Covering
{
    /// <summary>Where the volume of the vessel up to the top of the meat is known.</summary>
    /// <returns>Millilitres; not above zero when the meat does not fit.</returns>
    public static double LeastMillilitres(double meatMillilitres, double vesselMillilitres) => vesselMillilitres - meatMillilitres;

    /// <summary>Where it is not: the pieces fill a part of the vessel, and liquid the rest.</summary>
    /// <param name="meatMillilitres">Volume of all the meat.</param>
    /// <param name="filledPercent">Part of the vessel that is meat; above zero.</param>
    public static Band LeastMillilitres(double meatMillilitres, Band filledPercent)
    {
        return new Band(Left(filledPercent.High), Left(filledPercent.Typical), Left(filledPercent.Low));

        double Left(double filled) => meatMillilitres * (100 - filled) / filled;
    }
}
