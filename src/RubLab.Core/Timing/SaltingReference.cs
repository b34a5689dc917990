using System.Diagnostics.CodeAnalysis;

namespace RubLab.Core.Timing;

/// <summary>The reference data on how far salt gets.</summary>
public sealed class SaltingReference(
    SaltingLimits limits, IReadOnlyList<SaltDiffusivity> diffusivities, IReadOnlyList<WaterViscosity> viscosities)
{
    private const double AbsoluteZeroCelsius = -273.15;

    public SaltingLimits Limits { get; } = limits;

    /// <summary>The bands taken for the species, and the studies they rest on.</summary>
    public IReadOnlyList<SaltDiffusivity> Diffusivities { get; } = diffusivities;

    /// <summary>By rising temperature.</summary>
    public IReadOnlyList<WaterViscosity> Viscosities { get; } = viscosities;

    /// <summary>The band taken for a species.</summary>
    public bool TryFindDiffusivity(string species, [NotNullWhen(true)] out SaltDiffusivity? diffusivity)
    {
        diffusivity = Diffusivities.FirstOrDefault(d => d.IsDefault && d.Species == species);
        return diffusivity is not null;
    }

    /// <summary>How much faster salt spreads in free water at one temperature than at another: temperature over viscosity.</summary>
    /// <param name="celsius">Inside the limits.</param>
    /// <param name="referenceCelsius">Inside the limits.</param>
    /// <remarks>Of meat this is an estimate: heat also sets its proteins and drives water out.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside the table of viscosities.</exception>
    public double Speeding(double celsius, double referenceCelsius) => Speed(celsius) / Speed(referenceCelsius);

    private double Speed(double celsius) => (celsius - AbsoluteZeroCelsius) / ViscosityAt(celsius);

    // Viscosity's logarithm is nearly straight in the inverse of the temperature.
    private double ViscosityAt(double celsius)
    {
        for (var i = 1; i < Viscosities.Count; i++)
        {
            WaterViscosity cold = Viscosities[i - 1], warm = Viscosities[i];
            if (celsius >= cold.TemperatureCelsius && celsius <= warm.TemperatureCelsius)
            {
                double a = Inverse(cold.TemperatureCelsius), b = Inverse(warm.TemperatureCelsius);
                var share = (Inverse(celsius) - a) / (b - a);
                return cold.MillipascalSeconds * Math.Pow(warm.MillipascalSeconds / cold.MillipascalSeconds, share);
            }
        }

        throw new ArgumentOutOfRangeException(nameof(celsius), celsius, "No viscosity of water is known there.");

        static double Inverse(double celsius) => 1 / (celsius - AbsoluteZeroCelsius);
    }
}
