namespace RubLab.Contracts.Ingredients;

/// <summary>A density the kitchen weighed itself; it stands in place of the reference's everywhere in that kitchen.</summary>
public sealed record OwnDensityResponse
{
    public required string Ingredient { get; init; }

    public required string Form { get; init; }

    public required long Revision { get; init; }

    public required DensityResponse Density { get; init; }

    /// <summary>How many fillings.</summary>
    public required int Count { get; init; }

    /// <summary>Standard deviation of the fillings, percent of the mean; absent for one.</summary>
    public double? SpreadPercent { get; init; }

    /// <summary>What the reference says, g/mL; absent where it has none.</summary>
    public double? Reference { get; init; }

    public required IReadOnlyList<WeighingRequest> Weighings { get; init; }

    public required string UpdatedAt { get; init; }
}
