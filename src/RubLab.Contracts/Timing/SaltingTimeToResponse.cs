using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Timing;

/// <summary>Hours from the start; beyond the stages the last one goes on.</summary>
public sealed record SaltingTimeToResponse
{
    /// <summary>Until half of the salt it has once even is in the meat. Absent for a dry brine, all of whose salt counts as in the meat from the start.</summary>
    public QuantityBand? Half { get; init; }

    /// <summary>Until the middle is at 50 % of the mean.</summary>
    public required QuantityBand Even50 { get; init; }

    /// <summary>Until the middle is at 95 % of the mean.</summary>
    public required QuantityBand Even95 { get; init; }
}
