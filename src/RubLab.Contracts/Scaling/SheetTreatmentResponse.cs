using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Scaling;

/// <summary>One treatment on the sheet.</summary>
public sealed record SheetTreatmentResponse
{
    public required string Name { get; init; }

    public required string Kind { get; init; }

    /// <summary>Of the base the formula stands on.</summary>
    public required Quantity Dose { get; init; }

    public required string Base { get; init; }

    /// <summary>All amounts below are for this many applications together.</summary>
    public required int Applications { get; init; }

    /// <summary>As sent.</summary>
    public string? Stage { get; init; }

    /// <summary>What goes on the meat.</summary>
    public required Quantity OnMeat { get; init; }

    /// <summary>What to mix: with the overage.</summary>
    public required Quantity ToMix { get; init; }

    /// <summary>Of a sauce or mop that is boiled down: what the pot weighs when it is done; absent else.</summary>
    public Quantity? BoilDownTo { get; init; }

    /// <summary>What to weigh of each ingredient; toMix of the lines sums to toMix above.</summary>
    public required IReadOnlyList<SheetLineResponse> Lines { get; init; }

    /// <summary>Allergens that its ingredients hold by their nature; none listed does not mean that it is free of any.</summary>
    public required IReadOnlyList<AllergenResponse> Allergens { get; init; }

    /// <summary>Ids of its ingredients that differ by maker, whose own labels have to be read.</summary>
    public required IReadOnlyList<string> ReadYourLabel { get; init; }

    /// <summary>The mix bowl by bowl, where it needs several.</summary>
    public IReadOnlyList<BowlResponse>? Bowls { get; init; }

    /// <summary>Of an injection: the liquid put in, percent of the raw weight, as a label states added solution; absent else.</summary>
    public Quantity? AddedSolution { get; init; }

    /// <summary>How it lies on each line whose cut has a shape.</summary>
    public IReadOnlyList<CoverageResponse>? Coverage { get; init; }

    /// <summary>Whole steps that sum to <c>onMeat</c>; absent when not asked for.</summary>
    public IEnumerable<SheetPieceResponse>? Pieces { get; init; }
}
