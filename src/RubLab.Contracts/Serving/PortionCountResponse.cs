using RubLab.Contracts.Quantities;
using RubLab.Contracts.Remarks;
using RubLab.Contracts.Shopping;

namespace RubLab.Contracts.Serving;

/// <summary>How many portions a pile comes to.</summary>
public sealed record PortionCountResponse
{
    /// <summary>The pile's lines in their order.</summary>
    public required IReadOnlyList<PortionLineResponse> Lines { get; init; }

    /// <summary>Whole portions of all lines: the sum of theirs.</summary>
    public required CountBand Portions { get; init; }

    /// <summary>Cooked meat without bone of all lines.</summary>
    public required QuantityBand Edible { get; init; }

    /// <summary>What was paid, at typical yields; absent where nothing was said.</summary>
    public CostResponse? Cost { get; init; }

    public required IReadOnlyList<FindingResponse> Findings { get; init; }

    public required string DataVersion { get; init; }
}
