using RubLab.Core.Quantities;
using RubLab.Core.Sources;

namespace RubLab.Core.Timing;

/// <summary>How fast sodium chloride spreads in a kind of meat, as measured or as taken.</summary>
public sealed record SaltDiffusivity
{
    public required string Id { get; init; }

    /// <summary>A species of <see cref="Meat.Cut.Species"/>.</summary>
    public required string Species { get; init; }

    /// <summary>The band taken for the species; the other rows are the studies.</summary>
    public required bool IsDefault { get; init; }

    /// <summary>The species it was measured on.</summary>
    public required string MeasuredOn { get; init; }

    /// <summary>Where the study or the estimate names it.</summary>
    public required double? TemperatureCelsius { get; init; }

    public required Band SquareMetresPerSecond { get; init; }

    public required Citation Citation { get; init; }

    public required string Note { get; init; }

    /// <summary>Nobody measured this species; another stands in.</summary>
    public bool IsStandIn => MeasuredOn != Species;
}
