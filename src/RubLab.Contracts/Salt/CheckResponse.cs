using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Salt;

/// <summary>One figure held against one range, with its source.</summary>
public sealed record CheckResponse
{
    public required string Id { get; init; }

    public required string Title { get; init; }

    public required string Base { get; init; }

    /// <summary>Of the whole band: within, below, above or cannot-tell.</summary>
    public required string Verdict { get; init; }

    /// <summary>Of the typical value.</summary>
    public required string TypicalVerdict { get; init; }

    /// <summary>Absent where the figure cannot be put on the range's base.</summary>
    public QuantityBand? Measured { get; init; }

    public double? Lowest { get; init; }

    public double? Highest { get; init; }

    public required string Unit { get; init; }

    public required string SourceId { get; init; }

    public required string Locator { get; init; }

    public required string Confidence { get; init; }

    public required string Advice { get; init; }
}
