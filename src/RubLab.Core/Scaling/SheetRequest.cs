namespace RubLab.Core.Scaling;

/// <summary>What a batch sheet is made from.</summary>
public sealed record SheetRequest
{
    public const int MostTreatments = 20;
    public const int MostPileLines = 100;
    public const int MostPieceTreatments = 300_000;

    public required Pile Pile { get; init; }

    public required IReadOnlyList<Treatment> Treatments { get; init; }

    /// <summary>The kitchen's scales, all in one unit.</summary>
    public required ScaleSet Scales { get; init; }

    /// <summary>Mixed beyond what goes on, percent; it never enters the ledger.</summary>
    public required double OveragePercent { get; init; }

    /// <summary>What one mixing bowl holds, grams; none for a bowl that holds it all.</summary>
    public double? BowlGrams { get; init; }
}
