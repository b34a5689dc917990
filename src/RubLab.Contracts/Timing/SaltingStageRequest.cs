using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Timing;

/// <summary>A time at one temperature, with the salt or the liquid on the meat.</summary>
public sealed record SaltingStageRequest
{
    /// <summary>Of the meat, 0 to 100 C.</summary>
    public QuantityRequest? Temperature { get; init; }

    /// <summary>Above zero; all stages together up to a year.</summary>
    public QuantityRequest? Time { get; init; }
}
