namespace RubLab.Contracts.Ingredients;

/// <summary>A density the kitchen weighed itself; it stands in place of the reference's everywhere in that kitchen.</summary>
public sealed record OwnDensityResponse
{
    /// <summary>Ingredient id.</summary>
    public required string Ingredient { get; init; }

    /// <summary>Form id.</summary>
    public required string Form { get; init; }

    /// <summary>Rises by one with every change.</summary>
    public required long Revision { get; init; }

    /// <summary>The band used.</summary>
    public required DensityResponse Density { get; init; }

    /// <summary>How many fillings.</summary>
    public required int Count { get; init; }

    /// <summary>Standard deviation of the fillings, percent of the mean; absent for one.</summary>
    public double? SpreadPercent { get; init; }

    /// <summary>What the reference says, g/mL; absent where it has none.</summary>
    public double? Reference { get; init; }

    /// <summary>The fillings as sent.</summary>
    public required IReadOnlyList<WeighingResponse> Weighings { get; init; }

    /// <summary>When it was last weighed.</summary>
    public required string UpdatedAt { get; init; }
}
