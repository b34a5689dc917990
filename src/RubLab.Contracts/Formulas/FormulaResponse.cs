using RubLab.Contracts.Quantities;
using RubLab.Contracts.Remarks;

namespace RubLab.Contracts.Formulas;

/// <summary>A stored formula read back.</summary>
public sealed record FormulaResponse
{
    public required string Id { get; init; }

    /// <summary>Rises by one with every replacement.</summary>
    public required long Revision { get; init; }

    public required string Name { get; init; }

    public required string Kind { get; init; }

    /// <summary>What the ratios stand on.</summary>
    public required string Base { get; init; }

    /// <summary>As authored.</summary>
    public Quantity? Dose { get; init; }

    /// <summary>As authored.</summary>
    public Quantity? WrittenFor { get; init; }

    /// <summary>Which weight writtenFor is.</summary>
    public string? WrittenForIs { get; init; }

    /// <summary>Weight left when it is boiled down, percent of what goes into the pot.</summary>
    public Quantity? ReducedTo { get; init; }

    /// <summary>In the order authored.</summary>
    public required IReadOnlyList<FormulaLineResponse> Lines { get; init; }

    /// <summary>The whole formula per base, whether authored as a dose or summed from the lines.</summary>
    public required Quantity TotalRatio { get; init; }

    /// <summary>Sodium chloride, percent of the formula.</summary>
    public required QuantityBand SaltShare { get; init; }

    /// <summary>Bulk density of the mix, from its powders side by side to closest packing; absent where a line has none, and of an injection or a soak, whose lines dissolve.</summary>
    public QuantityBand? BulkDensity { get; init; }

    public required IReadOnlyList<FindingResponse> Findings { get; init; }

    /// <summary>When this revision was stored, UTC.</summary>
    public required string UpdatedAt { get; init; }

    public required string DataVersion { get; init; }
}
