using RubLab.Contracts.Quantities;
using RubLab.Contracts.Remarks;

namespace RubLab.Contracts.Ingredients;

/// <summary>An amount converted.</summary>
public sealed record ConversionResponse
{
    public required string Ingredient { get; init; }

    /// <summary>The form named, or the default one.</summary>
    public required string Form { get; init; }

    /// <summary>The amount as sent.</summary>
    public required Quantity Amount { get; init; }

    /// <summary>In the unit asked for.</summary>
    public required QuantityBand Result { get; init; }

    /// <summary>Absent where mass went to mass or volume to volume.</summary>
    public DensityResponse? Density { get; init; }

    public required IReadOnlyList<FindingResponse> Findings { get; init; }

    public required string DataVersion { get; init; }
}
