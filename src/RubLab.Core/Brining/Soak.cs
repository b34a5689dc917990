using RubLab.Core.Diffusion;
using RubLab.Core.Quantities;

namespace RubLab.Core.Brining;

/// <summary>Meat lying in a liquid: salt evens out over the water of both and none is lost.</summary>
/// <remarks>All masses are per kilogram of green meat. Partition 1: once even, the meat's water is as strong as the liquid's.</remarks>
public sealed record Soak
{
    /// <summary>The liquid, grams per kilogram of green meat; above zero.</summary>
    public required double LiquidGramsPerKilogram { get; init; }

    /// <summary>What the liquid is made of.</summary>
    public required Brine Liquid { get; init; }

    /// <summary>The meat's own water, grams per kilogram; above zero.</summary>
    public required double MeatWaterGramsPerKilogram { get; init; }

    /// <summary>Sodium chloride in the meat before.</summary>
    public double SaltInMeatGramsPerKilogram { get; init; }

    /// <summary>How far it is towards even, 0 to 1: 1 once even.</summary>
    public Band Evenness { get; init; } = Band.Exact(1);

    private double LiquidWater => LiquidGramsPerKilogram * Liquid.WaterFraction;

    /// <summary>Water of the liquid over water of the meat.</summary>
    public double WaterRatio => LiquidWater / MeatWaterGramsPerKilogram;

    /// <summary>Sodium chloride in a kilogram of green meat once even: all of the salt times the meat's part of the water.</summary>
    public Band EvenSaltGramsPerKilogram =>
        Liquid.SaltFraction.Times(LiquidGramsPerKilogram).Plus(Band.Exact(SaltInMeatGramsPerKilogram)).Over(1 + WaterRatio);

    /// <summary>Sodium chloride in a kilogram of green meat at the end.</summary>
    public Band SaltGramsPerKilogram
    {
        get
        {
            var even = EvenSaltGramsPerKilogram;
            var typical = At(even.Typical, Evenness.Typical);
            var low = Math.Min(At(even.Low, Evenness.Low), At(even.Low, Evenness.High));
            var high = Math.Max(At(even.High, Evenness.Low), At(even.High, Evenness.High));
            return new Band(Math.Min(low, typical), typical, Math.Max(high, typical));

            double At(double end, double evenness) => SaltInMeatGramsPerKilogram + ((end - SaltInMeatGramsPerKilogram) * evenness);
        }
    }

    /// <summary>Strength once even: salt over salt and all the water, percent.</summary>
    public double EvenStrengthPercent
    {
        get
        {
            var salt = (Liquid.SaltFraction.Typical * LiquidGramsPerKilogram) + SaltInMeatGramsPerKilogram;
            return 100 * salt / (salt + LiquidWater + MeatWaterGramsPerKilogram);
        }
    }

    /// <summary>
    /// The part of the liquid's salt that is in the meat at the end, 0 to 1, of meat that began with none: what <c>retained</c> is to
    /// an injection.
    /// </summary>
    /// <param name="waterRatio">Water of the liquid over water of the meat; zero and above.</param>
    /// <param name="evenness">How far it is towards even, 0 to 1.</param>
    public static Band TakenUp(double waterRatio, Band evenness) => evenness.Over(1 + waterRatio);

    /// <summary>How far a soak is towards even after a time, at the corners of what is not known.</summary>
    /// <param name="waterRatio">Water of the liquid over water of the meat; above zero.</param>
    /// <param name="geometry">How far the salt has to go.</param>
    /// <param name="squareMetresPerSecond">Diffusivity of salt in the meat.</param>
    /// <param name="minutes">The time, zero or more.</param>
    public static Band EvennessAfter(double waterRatio, SoakGeometry geometry, Band squareMetresPerSecond, double minutes)
    {
        var bath = geometry.IsCylinder ? LimitedBath.Cylinder(waterRatio) : LimitedBath.Slab(waterRatio);
        var half = geometry.HalfThicknessMillimetres;
        var low = At(squareMetresPerSecond.Low, half.High);
        var typical = At(squareMetresPerSecond.Typical, half.Typical);
        var high = At(squareMetresPerSecond.High, half.Low);
        return new Band(Math.Min(low, typical), typical, Math.Max(typical, high));

        double At(double diffusivity, double millimetres) =>
            bath.UptakeAt(diffusivity * minutes * 60 / (millimetres * millimetres * 1e-6));
    }
}
