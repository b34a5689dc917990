namespace RubLab.Core.Catalogues;

/// <summary>The single figures of <c>constants.csv</c> that the computations name.</summary>
public sealed record Constants
{
    /// <summary>Sodium in sodium chloride, by mass.</summary>
    public required double SodiumInSodiumChlorideGramsPerGram { get; init; }

    /// <summary>How far the mass in a spoon or cup strays from hand to hand, percent either way.</summary>
    public required double SpoonFillingSpreadPercent { get; init; }

    /// <summary>Forms that differ by more than this are asked for, percent.</summary>
    public required double FormSpreadAsksPercent { get; init; }

    /// <summary>A weighing step above this share of an amount is called coarse, percent.</summary>
    public required double CoarseStepPercent { get; init; }
}
