using RubLab.Core.Meat;
using RubLab.Core.Shopping;
using RubLab.Core.Yields;

namespace RubLab.Core.Serving;

/// <summary>One cut of a menu.</summary>
public sealed record MenuLine
{
    public required string Id { get; init; }

    public required Cut Cut { get; init; }

    /// <summary>Part of every guest's portion, percent; those of a menu sum to 100.</summary>
    public required double SharePercent { get; init; }

    public required YieldChoice Choice { get; init; }

    /// <summary>Purchase weight of one piece, grams; none for meat bought by weight.</summary>
    public required CountedBand? PieceGrams { get; init; }

    /// <summary>None where nobody said.</summary>
    public Price? Price { get; init; }
}
