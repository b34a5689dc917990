using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Brining;

/// <summary>How strong a liquid is in salt, whatever else is dissolved.</summary>
public sealed record StrengthResponse
{
    /// <summary>Sodium chloride over sodium chloride and water, in percent.</summary>
    public required double Percent { get; init; }

    /// <summary>Degrees of the salometer.</summary>
    public required double Salometer { get; init; }

    /// <summary>Degrees Baume, for liquids heavier than water.</summary>
    public required double Baume { get; init; }

    /// <summary>Against water of the same temperature.</summary>
    public required double SpecificGravity { get; init; }

    /// <summary>The temperature that floats are marked for and these readings hold at.</summary>
    public required Quantity AtTemperature { get; init; }
}
