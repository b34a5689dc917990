using RubLab.Core.Quantities;

namespace RubLab.Core.Timing;

/// <summary>The diffusivity a computation takes.</summary>
public sealed record AssumedDiffusivity
{
    private AssumedDiffusivity(Band squareMetresPerSecond, double? temperatureCelsius, SaltDiffusivity? reference)
    {
        SquareMetresPerSecond = squareMetresPerSecond;
        TemperatureCelsius = temperatureCelsius;
        Reference = reference;
    }

    /// <summary>At <see cref="TemperatureCelsius"/>.</summary>
    public Band SquareMetresPerSecond { get; }

    /// <summary>Where the figure holds; none for a figure that holds in every stage as it is.</summary>
    public double? TemperatureCelsius { get; }

    /// <summary>The row of the reference data it is; none where it was given.</summary>
    public SaltDiffusivity? Reference { get; }

    /// <summary>A figure somebody gave.</summary>
    /// <param name="squareMetresPerSecond">Above zero, exact or a band.</param>
    /// <param name="temperatureCelsius">Where it holds; none for every stage alike.</param>
    /// <exception cref="ArgumentOutOfRangeException">Zero or below.</exception>
    public static AssumedDiffusivity Given(Band squareMetresPerSecond, double? temperatureCelsius = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(squareMetresPerSecond.Low);
        return new(squareMetresPerSecond, temperatureCelsius, null);
    }

    /// <summary>The reference data's for a species.</summary>
    public static AssumedDiffusivity Of(SaltDiffusivity reference)
    {
        ArgumentNullException.ThrowIfNull(reference);
        return new(reference.SquareMetresPerSecond, reference.TemperatureCelsius, reference);
    }
}
