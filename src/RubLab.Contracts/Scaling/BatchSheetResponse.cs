using System.Text.Json.Serialization;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Remarks;

namespace RubLab.Contracts.Scaling;

/// <summary>The sheet: what to weigh, how much goes on each piece, and the salt it comes to.</summary>
public sealed record BatchSheetResponse
{
    /// <summary>weighed, or planned while a purchase weight has no trim loss.</summary>
    public required string Status { get; init; }

    /// <summary>The whole pile, trimmed.</summary>
    public required Quantity GreenWeight { get; init; }

    /// <summary>How many pieces the treatments list together: how long the answer is.</summary>
    [JsonIgnore]
    public int PieceCount { get; init; }

    /// <summary>Empty for a check.</summary>
    public required IReadOnlyList<SheetTreatmentResponse> Treatments { get; init; }

    /// <summary>The salt ledger of each pile line.</summary>
    public required IReadOnlyList<LineLedgerResponse> Salt { get; init; }

    public required IReadOnlyList<FindingResponse> Findings { get; init; }

    public required IReadOnlyList<CautionResponse> Cautions { get; init; }

    public required string DataVersion { get; init; }
}
