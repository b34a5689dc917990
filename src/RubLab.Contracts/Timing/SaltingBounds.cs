using RubLab.Contracts.Reading;
using RubLab.Core.Timing;

namespace RubLab.Contracts.Timing;

/// <summary>The limits of the reference data as ranges of what is read.</summary>
internal static class SaltingBounds
{
    private const double MinutesPerHour = 60;

    public static Bounds Millimetres(SaltingLimits limits) => new(limits.LowestThicknessMillimetres, limits.HighestThicknessMillimetres, true, "mm");

    public static Bounds Celsius(SaltingLimits limits) => new(limits.LowestTemperatureCelsius, limits.HighestTemperatureCelsius, true, "C");

    /// <summary>One stage; all together have a least time too.</summary>
    public static Bounds Minutes(SaltingLimits limits) => new(0, limits.HighestHours * MinutesPerHour, false, "min");

    public static Bounds WaterRatio(SaltingLimits limits) => new(limits.LowestWaterRatio, limits.HighestWaterRatio, true, "");

    public static Bounds SquareMetresPerSecond(SaltingLimits limits) =>
        new(limits.LowestDiffusivitySquareMetresPerSecond, limits.HighestDiffusivitySquareMetresPerSecond, true, "m2/s");
}
