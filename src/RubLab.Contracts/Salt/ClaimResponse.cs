using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Salt;

/// <summary>A sodium claim the cooked meat may be able to make; those it cannot are left out.</summary>
public sealed record ClaimResponse
{
    /// <summary>The claim.</summary>
    public required string Id { get; init; }

    /// <summary>The claim's words.</summary>
    public required string Name { get; init; }

    /// <summary>us, eu, uk or codex.</summary>
    public required string Jurisdiction { get; init; }

    /// <summary>within: the high end of the band allows it; cannot-tell: only part of the band does.</summary>
    public required string Verdict { get; init; }

    /// <summary>Sodium in the amount of cooked meat the claim is judged by.</summary>
    public required QuantityBand Measured { get; init; }

    /// <summary>That amount.</summary>
    public required Quantity Per { get; init; }

    /// <summary>The most sodium it allows, mg.</summary>
    public required double Highest { get; init; }

    /// <summary>Where the limit comes from.</summary>
    public required string SourceId { get; init; }

    /// <summary>Where in the source.</summary>
    public required string Locator { get; init; }

    /// <summary>How far the figure can be trusted.</summary>
    public required string Confidence { get; init; }
}
