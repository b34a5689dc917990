using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Curing;

/// <summary>One ingredient of a cure.</summary>
public sealed record CureLineResponse
{
    public required string Ingredient { get; init; }

    public required string Form { get; init; }

    /// <summary>Per kg of green meat.</summary>
    public required Quantity Ratio { get; init; }

    /// <summary>For all the meat, before any rounding to the scale.</summary>
    public required Quantity Exact { get; init; }

    /// <summary>What to weigh: a limited additive is never rounded up. Absent from a check.</summary>
    public Quantity? Weighed { get; init; }

    /// <summary>How far what is weighed is from what is exact, percent of that; absent from a check and where there is nothing to weigh.</summary>
    public double? ErrorPercent { get; init; }

    /// <summary>It was solved for a target.</summary>
    public required bool IsSolved { get; init; }
}
