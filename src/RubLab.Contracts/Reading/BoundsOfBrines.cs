namespace RubLab.Contracts.Reading;

/// <summary>The ranges of figures that only liquids have.</summary>
internal static class BoundsOfBrines
{
    /// <summary>
    /// Liquid pumped in, per green weight: up to the meat's own weight. Pumps on record end far below; what is beyond the meat's
    /// weight cannot be meant, and 400 % is most likely 40.
    /// </summary>
    public static readonly Bounds PumpGramsPerKilogram = Bounds.DoseGramsPerKilogram;

    /// <summary>A liquid that raw meat lies in or is pumped with.</summary>
    public static readonly Bounds LiquidCelsius = new(0, 40, true, "C");

    /// <summary>What stays in needles, hoses and bowls, of what is made.</summary>
    public static readonly Bounds LossGramsPerKilogram = new(0, 900, true, "g/kg");

    /// <summary>The same as a mass.</summary>
    public static readonly Bounds LossGrams = new(0, 1e6, true, "g");

    /// <summary>A liquid's mass in grams, or its volume in millilitres.</summary>
    public static readonly Bounds Liquid = new(0.001, 1e7, true, "");

    /// <summary>Water of raw meat.</summary>
    public static readonly Bounds MeatWaterPercent = new(1, 90, true, "%");

    /// <summary>Salt in meat before: a dry-cured ham has some 80 g/kg.</summary>
    public static readonly Bounds SaltInMeatGramsPerKilogram = new(0, 150, true, "g/kg");

    /// <summary>A soak's time, up to ninety days.</summary>
    public static readonly Bounds Minutes = new(1, 90 * 1440, true, "min");

    /// <summary>Diffusivity of salt in meat, far beyond both ends of what was measured.</summary>
    public static readonly Bounds SquareMetresPerSecond = new(1e-13, 1e-7, true, "m2/s");
}
