using RubLab.Contracts.Quantities;
using RubLab.Contracts.Remarks;
using RubLab.Contracts.Salt;

namespace RubLab.Contracts.Brining;

/// <summary>A liquid, what to make of it and what it leaves in the meat.</summary>
public sealed record BrineResponse
{
    public required string Kind { get; init; }

    /// <summary>Liquid per green weight: of an injection the pump, as weighed back where it was.</summary>
    public required Quantity Dose { get; init; }

    /// <summary>Injection: what stays, as weighed back where it was.</summary>
    public QuantityBand? Retained { get; init; }

    /// <summary>Salt only, as floats are marked.</summary>
    public required StrengthResponse Strength { get; init; }

    /// <summary>The temperature of the liquid.</summary>
    public required Quantity Temperature { get; init; }

    /// <summary>The most salt a solution holds at that temperature, percent.</summary>
    public required double SaturatedPercent { get; init; }

    /// <summary>In the order given; lines that targets added come last.</summary>
    public required IReadOnlyList<BrineLineResponse> Lines { get; init; }

    /// <summary>Ingredient ids in the order they go into the cold liquid.</summary>
    public required IReadOnlyList<string> DissolvingOrder { get; init; }

    /// <summary>What goes into, or around, the meat.</summary>
    public required LiquidResponse Needed { get; init; }

    /// <summary>What is made.</summary>
    public required MadeResponse Made { get; init; }

    /// <summary>One for each ingredient but water.</summary>
    public required IReadOnlyList<ReachedResponse> Reached { get; init; }

    /// <summary>Sodium chloride from all lines.</summary>
    public required ReachedResponse Salt { get; init; }

    /// <summary>Injection: what a piece of mean weight weighs when enough is in it, before it drains.</summary>
    public Quantity? TargetPieceWeight { get; init; }

    /// <summary>Injection: what it weighs after draining.</summary>
    public QuantityBand? DrainedPieceWeight { get; init; }

    /// <summary>Injection with pieceWeights: the same for each piece.</summary>
    public IReadOnlyList<BrinePieceResponse>? Pieces { get; init; }

    /// <summary>Injection: as a label states it.</summary>
    public AddedSolutionResponse? AddedSolution { get; init; }

    /// <summary>Soak: how it ends.</summary>
    public SoakResponse? Soak { get; init; }

    /// <summary>The salt held against published and common-practice ranges; none without a cut.</summary>
    public required IReadOnlyList<CheckResponse> Checks { get; init; }

    public required IReadOnlyList<FindingResponse> Findings { get; init; }

    public required IReadOnlyList<CautionResponse> Cautions { get; init; }

    public required string DataVersion { get; init; }
}
