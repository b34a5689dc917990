namespace RubLab.Core.Brining;

/// <summary>Sodium chloride in water: density, the salometer, specific gravity, Baume and saturation.</summary>
/// <remarks>
/// Between rows of the tables all figures are interpolated straight. Densities are good from 0 to 26 % salt and 10 to 20 C, where
/// the table's own coefficient was taken; beyond both they follow the last coefficient. Floats are marked for 60 F.
/// </remarks>
public sealed class SaltSolution
{
    /// <summary>60 F, at which salometers, Baume floats and specific gravities are read; by definition.</summary>
    public const double FloatCelsius = 140.0 / 9;

    private const double TableCelsius = 20;

    // Degrees Baume of liquids heavier than water at 60 F: by definition 145 - 145 / specific gravity.
    private const double BaumeModulus = 145;

    private readonly SolutionDensity[] _densities;
    private readonly Solubility[] _solubilities;
    private readonly double _percentPerDegree;

    /// <summary>Takes tables in rising order of salt and of temperature, at least two rows each.</summary>
    /// <param name="densities">Densities by salt, starting at none.</param>
    /// <param name="solubilities">Saturation by temperature.</param>
    /// <param name="salometerFullPercent">Salt at 100 degrees of the salometer.</param>
    /// <exception cref="ArgumentException">Tables too short or out of order.</exception>
    public SaltSolution(IReadOnlyList<SolutionDensity> densities, IReadOnlyList<Solubility> solubilities, double salometerFullPercent)
    {
        _densities = [.. densities];
        _solubilities = [.. solubilities];
        _percentPerDegree = salometerFullPercent / 100;
        if (!IsRising(_densities, row => row.SaltPercent) || !IsRising(_solubilities, row => row.Celsius) || !(salometerFullPercent > 0))
        {
            throw new ArgumentException("The tables run upward, two rows or more each.", nameof(densities));
        }
    }

    /// <summary>The temperatures saturation is known for.</summary>
    public double LowestCelsius => _solubilities[0].Celsius;

    /// <summary>The highest of them.</summary>
    public double HighestCelsius => _solubilities[^1].Celsius;

    /// <summary>Salometer degrees at 60 F of a strength in percent.</summary>
    public double SalometerOf(double percent) => percent / _percentPerDegree;

    /// <summary>Strength in percent of salometer degrees at 60 F.</summary>
    public double PercentOf(double salometerDegrees) => salometerDegrees * _percentPerDegree;

    /// <summary>Density at a temperature.</summary>
    /// <param name="percent">Sodium chloride by weight of the solution, 0 to saturation.</param>
    /// <param name="celsius">Temperature; see the remarks for the range.</param>
    public double DensityGramsPerMillilitre(double percent, double celsius)
    {
        var i = 1;
        while (i < _densities.Length - 1 && _densities[i].SaltPercent < percent)
        {
            i++;
        }

        return (At(i - 1) + ((At(i) - At(i - 1)) * (percent - _densities[i - 1].SaltPercent) / (_densities[i].SaltPercent - _densities[i - 1].SaltPercent))) / 1000;

        double At(int row) => _densities[row].At20CelsiusKilogramsPerCubicMetre
            + (_densities[row].FallKilogramsPerCubicMetrePerCelsius * (TableCelsius - celsius));
    }

    /// <summary>Specific gravity at 60 F against water at 60 F.</summary>
    public double SpecificGravity(double percent) =>
        DensityGramsPerMillilitre(percent, FloatCelsius) / DensityGramsPerMillilitre(0, FloatCelsius);

    /// <summary>Degrees Baume, the scale for liquids heavier than water.</summary>
    public double Baume(double percent) => BaumeModulus - (BaumeModulus / SpecificGravity(percent));

    /// <summary>The most salt a solution holds, percent of its weight.</summary>
    /// <param name="celsius">From <see cref="LowestCelsius"/> to <see cref="HighestCelsius"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those.</exception>
    public double SaturatedPercent(double celsius)
    {
        if (!(celsius >= LowestCelsius && celsius <= HighestCelsius))
        {
            throw new ArgumentOutOfRangeException(nameof(celsius), celsius, "Outside the table.");
        }

        var i = 1;
        while (_solubilities[i].Celsius < celsius)
        {
            i++;
        }

        var (low, high) = (_solubilities[i - 1], _solubilities[i]);
        return low.SaturatedPercent + ((high.SaturatedPercent - low.SaturatedPercent) * (celsius - low.Celsius) / (high.Celsius - low.Celsius));
    }

    private static bool IsRising<T>(T[] rows, Func<T, double> of)
    {
        for (var i = 1; i < rows.Length; i++)
        {
            if (!(of(rows[i]) > of(rows[i - 1])))
            {
                return false;
            }
        }

        return rows.Length > 1;
    }
}
