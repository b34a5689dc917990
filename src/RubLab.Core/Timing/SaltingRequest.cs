using RubLab.Core.Diffusion;

namespace RubLab.Core.Timing;

/// <summary>What is asked about one piece.</summary>
public sealed record SaltingRequest
{
    public required SaltingMethod Method { get; init; }

    public required SaltedBody Body { get; init; }

    /// <summary>In their order. Where a time to come lies beyond them, the last one is taken to go on.</summary>
    public required IReadOnlyList<SaltingStage> Stages { get; init; }

    public required AssumedDiffusivity Diffusivity { get; init; }

    /// <summary>Water of the liquid over water of the meat; for a soak, and for it alone.</summary>
    public double? WaterRatio { get; init; }

    /// <summary>Hours of all stages.</summary>
    public double Hours => Stages.Sum(s => s.Hours);

    // A dry brine and a salt bed are the two ends of a bath.
    internal double Bath => Method switch
    {
        SaltingMethod.DryBrine => 0,
        SaltingMethod.SaltBed => double.PositiveInfinity,
        _ => WaterRatio!.Value,
    };

    internal void Guard(SaltingLimits limits)
    {
        ArgumentOutOfRangeException.ThrowIfZero(Stages.Count, nameof(Stages));
        foreach (var stage in Stages)
        {
            Within(stage.TemperatureCelsius, limits.LowestTemperatureCelsius, limits.HighestTemperatureCelsius, nameof(stage.TemperatureCelsius));
            Within(stage.Hours, 0, limits.HighestHours, nameof(stage.Hours));
        }

        Within(Hours, limits.LowestHours, limits.HighestHours, nameof(Hours));
        foreach (var dimension in Body.Dimensions)
        {
            Within(dimension.Millimetres.Low, limits.LowestThicknessMillimetres, limits.HighestThicknessMillimetres, nameof(Body));
            Within(dimension.Millimetres.High, limits.LowestThicknessMillimetres, limits.HighestThicknessMillimetres, nameof(Body));
        }

        var diffusivity = Diffusivity.SquareMetresPerSecond;
        Within(diffusivity.Low, limits.LowestDiffusivitySquareMetresPerSecond, limits.HighestDiffusivitySquareMetresPerSecond, nameof(Diffusivity));
        Within(diffusivity.High, limits.LowestDiffusivitySquareMetresPerSecond, limits.HighestDiffusivitySquareMetresPerSecond, nameof(Diffusivity));
        if (Diffusivity.TemperatureCelsius is { } celsius)
        {
            Within(celsius, limits.LowestTemperatureCelsius, limits.HighestTemperatureCelsius, nameof(Diffusivity));
        }

        if ((Method == SaltingMethod.Soak) != WaterRatio.HasValue)
        {
            throw new InvalidOperationException("A soak has a water ratio, and nothing else has.");
        }

        if (WaterRatio is { } ratio)
        {
            Within(ratio, limits.LowestWaterRatio, limits.HighestWaterRatio, nameof(WaterRatio));
        }
    }

    private static void Within(double value, double lowest, double highest, string name)
    {
        if (!(value >= lowest && value <= highest))
        {
            throw new ArgumentOutOfRangeException(name, value, $"Outside {lowest} to {highest}.");
        }
    }
}
