using RubLab.Core.Quantities;

namespace RubLab.Core.Scaling;

/// <summary>What soaking meat held before: the liquid draws some of it out while its own salt goes in.</summary>
/// <param name="SaltGramsPerKilogram">Sodium chloride in a kilogram of green meat.</param>
/// <param name="SodiumGramsPerKilogram">Sodium of that salt.</param>
/// <param name="WaterRatio">Water of the liquid over water of the meat.</param>
public sealed record SaltBefore(double SaltGramsPerKilogram, double SodiumGramsPerKilogram, double WaterRatio)
{
    /// <summary>Sodium chloride in the meat at the end.</summary>
    /// <param name="putOn">Of the liquid, grams per kilogram of green meat.</param>
    /// <param name="takenUp">The part of it that the meat takes up, 0 to 1.</param>
    public Band SaltWith(Band putOn, Band takenUp) => With(SaltGramsPerKilogram, putOn, takenUp);

    /// <summary>The same for sodium.</summary>
    public Band SodiumWith(Band putOn, Band takenUp) => With(SodiumGramsPerKilogram, putOn, takenUp);

    // The further the soak gets, the more goes in and the more is drawn out: one unknown, so the corners are of the sum.
    private Band With(double before, Band putOn, Band takenUp)
    {
        var typical = At(putOn.Typical, takenUp.Typical);
        var low = Math.Min(At(putOn.Low, takenUp.Low), At(putOn.Low, takenUp.High));
        var high = Math.Max(At(putOn.High, takenUp.Low), At(putOn.High, takenUp.High));
        return new Band(Math.Min(low, typical), typical, Math.Max(high, typical));

        double At(double put, double part) => (put * part) + Math.Max(0, before * (1 - (WaterRatio * part)));
    }
}
