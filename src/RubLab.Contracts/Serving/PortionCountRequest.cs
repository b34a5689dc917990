using RubLab.Contracts.Quantities;
using RubLab.Contracts.Scaling;
using RubLab.Contracts.Shopping;

namespace RubLab.Contracts.Serving;

/// <summary>A pile of meat, to be turned into portions.</summary>
public sealed record PortionCountRequest
{
    /// <summary>Pieces weighed, as bought or trimmed; up to 100 lines.</summary>
    public IReadOnlyList<PileLineRequest?>? Pile { get; init; }

    /// <summary>Cooked edible meat for one, without bone, where a line has no portion of its own.</summary>
    public QuantityRequest? Portion { get; init; }

    /// <summary>small, ordinary (default) or hearty, where no portion is given.</summary>
    public string? Appetite { get; init; }

    /// <summary>What the whole pile cost.</summary>
    public MoneyRequest? Paid { get; init; }
}
