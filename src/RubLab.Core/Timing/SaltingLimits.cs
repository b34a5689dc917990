namespace RubLab.Core.Timing;

/// <summary>What is computed and what is refused, and the levels the findings name. From <c>constants.csv</c>.</summary>
public sealed record SaltingLimits
{
    public required double LowestDiffusivitySquareMetresPerSecond { get; init; }

    public required double HighestDiffusivitySquareMetresPerSecond { get; init; }

    public required double LowestTemperatureCelsius { get; init; }

    public required double HighestTemperatureCelsius { get; init; }

    public required double LowestThicknessMillimetres { get; init; }

    public required double HighestThicknessMillimetres { get; init; }

    /// <summary>Of all stages together.</summary>
    public required double LowestHours { get; init; }

    /// <summary>Of all stages together.</summary>
    public required double HighestHours { get; init; }

    /// <summary>Water of the liquid over water of the meat.</summary>
    public required double LowestWaterRatio { get; init; }

    public required double HighestWaterRatio { get; init; }

    /// <summary>Salted means holding at least this share of the even strength, percent.</summary>
    public required double DepthSharePercent { get; init; }

    /// <summary>Below this share of the mean the middle is called hardly salted, percent.</summary>
    public required double ShallowPercent { get; init; }

    /// <summary>A stage at or above this temperature is a warm one.</summary>
    public required double WarmTemperatureCelsius { get; init; }

    /// <summary>Warm stages that do more than this share of the travel are named, percent.</summary>
    public required double WarmSharePercent { get; init; }
}
