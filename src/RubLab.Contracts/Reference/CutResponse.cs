namespace RubLab.Contracts.Reference;

/// <summary>A cut with what is known of it. Figures nobody published are absent.</summary>
public sealed record CutResponse
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    public required string Species { get; init; }

    /// <summary>The raw meat's own sodium, mg per 100 g.</summary>
    public FigureResponse? Sodium { get; init; }

    /// <summary>Water in the raw meat.</summary>
    public FigureResponse? Water { get; init; }

    /// <summary>Percent of purchase weight lost in trimming.</summary>
    public FigureResponse? TrimLoss { get; init; }

    /// <summary>Cooked over raw weight by method, the default first; the basis says of what.</summary>
    public required IReadOnlyList<FigureResponse> CookYields { get; init; }

    /// <summary>Salt that stays in the meat through cooking, percent.</summary>
    public FigureResponse? KeptInCooking { get; init; }

    /// <summary>Ids of the salt ranges this cut is compared with.</summary>
    public required IReadOnlyList<string> SaltRanges { get; init; }

    public required string SourceId { get; init; }

    public required string Locator { get; init; }
}
