using RubLab.Core.Quantities;

namespace RubLab.Core.Brining;

/// <summary>What is known of salt solutions, and the single figures brines are reckoned with.</summary>
public sealed record BrineFigures
{
    public required SaltSolution Solution { get; init; }

    /// <summary>Volume that a gram of what is dissolved beside salt adds to a liquid.</summary>
    public required double DissolvedMillilitresPerGram { get; init; }

    /// <summary>Temperature of a liquid where none is given.</summary>
    public required double AssumedCelsius { get; init; }

    /// <summary>Raw meat and its liquid are held at this or colder.</summary>
    public required double ColdHoldingCelsius { get; init; }

    public required string ColdHoldingSourceId { get; init; }

    /// <summary>The largest pump that a worked example on record has, percent of green weight.</summary>
    public required double HighestWorkedPumpPercent { get; init; }

    public required string HighestWorkedPumpSourceId { get; init; }

    /// <summary>Part of a vessel that stacked pieces fill once the liquid just covers them; an estimate.</summary>
    public required Band StackedFilledPercent { get; init; }

    public required string StackedFilledSourceId { get; init; }
}
