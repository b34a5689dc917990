namespace RubLab.Core.Timing;

/// <summary>The stages as hours at the temperature the diffusivity holds for.</summary>
internal sealed class Journey
{
    private const double SecondsPerHour = 3600;
    private const double SquareMillimetresPerSquareMetre = 1e6;

    private readonly IReadOnlyList<SaltingStage> _stages;
    private readonly double[] _speeds;

    public Journey(SaltingRequest request, SaltingReference reference)
    {
        _stages = request.Stages;
        _speeds = [.. _stages.Select(stage => request.Diffusivity.TemperatureCelsius is { } celsius
            ? reference.Speeding(stage.TemperatureCelsius, celsius)
            : 1)];
    }

    private double EquivalentHours => _stages.Select((stage, i) => stage.Hours * _speeds[i]).Sum();

    /// <summary>The sum of D x t, mm2.</summary>
    public double Travel(double squareMetresPerSecond) => EquivalentHours * PerHour(squareMetresPerSecond);

    /// <summary>The sum of D x t up to an hour, mm2; the last stage goes on as long as needed.</summary>
    public double TravelBy(double hours, double squareMetresPerSecond)
    {
        var equivalent = 0.0;
        for (var i = 0; i < _stages.Count - 1; i++)
        {
            var here = Math.Min(hours, _stages[i].Hours);
            equivalent += here * _speeds[i];
            hours -= here;
        }

        return (equivalent + (hours * _speeds[^1])) * PerHour(squareMetresPerSecond);
    }

    /// <summary>The hours after which a travel is done; the last stage goes on as long as needed.</summary>
    public double HoursFor(double travel, double squareMetresPerSecond)
    {
        double left = travel / PerHour(squareMetresPerSecond), hours = 0;
        for (var i = 0; i < _stages.Count - 1; i++)
        {
            var here = _stages[i].Hours * _speeds[i];
            if (left <= here)
            {
                return hours + (left / _speeds[i]);
            }

            left -= here;
            hours += _stages[i].Hours;
        }

        return hours + (left / _speeds[^1]);
    }

    /// <summary>The part of the travel done in stages that fit, 0 to 1.</summary>
    public double ShareOf(Func<SaltingStage, bool> fits) =>
        _stages.Select((stage, i) => fits(stage) ? stage.Hours * _speeds[i] : 0).Sum() / EquivalentHours;

    private static double PerHour(double squareMetresPerSecond) =>
        squareMetresPerSecond * SquareMillimetresPerSquareMetre * SecondsPerHour;
}
