using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Brining;

/// <summary>How a soak ends.</summary>
public sealed record SoakResponse
{
    /// <summary>Percent of the way to even.</summary>
    public required QuantityBand Evenness { get; init; }

    /// <summary>Percent of the liquid's salt that is in the meat at the end, of meat that began with none.</summary>
    public required QuantityBand TakenUp { get; init; }

    /// <summary>Sodium chloride in the meat once even, per kg green.</summary>
    public required QuantityBand EvenPerKgGreen { get; init; }

    /// <summary>Strength of liquid and meat water once even, percent.</summary>
    public required double EvenStrengthPercent { get; init; }

    /// <summary>Water of the liquid over water of the meat, as a salting time takes it.</summary>
    public required double WaterRatio { get; init; }

    /// <summary>The least liquid that covers the meat; absent where the meat's volume is not known.</summary>
    public QuantityBand? LeastLiquid { get; init; }
}
