using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Yields;

/// <summary>The yield of one way of cooking, as the kitchen's records give it.</summary>
public sealed record OwnYieldFigure
{
    /// <summary>Way of cooking; absent where the records name none.</summary>
    public string? Method { get; init; }

    /// <summary>Cooked over green, or over purchase weight.</summary>
    public required string WeightIs { get; init; }

    /// <summary>How many records.</summary>
    public required int Count { get; init; }

    /// <summary>All that was cooked over all that went in, percent.</summary>
    public required double MeanPercent { get; init; }

    /// <summary>Standard deviation of the records, percent of the mean; absent for one.</summary>
    public double? SpreadPercent { get; init; }

    /// <summary>How much of the typical value is the kitchen's own, percent.</summary>
    public required double OwnSharePercent { get; init; }

    /// <summary>What the reference says, percent; absent where it says nothing.</summary>
    public QuantityBand? Reference { get; init; }

    /// <summary>The band used.</summary>
    public required QuantityBand Yield { get; init; }

    /// <summary>How far the figure can be trusted.</summary>
    public required string Confidence { get; init; }
}
