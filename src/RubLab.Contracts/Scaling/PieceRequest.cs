using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Scaling;

/// <summary>One weighed piece.</summary>
public sealed record PieceRequest
{
    /// <summary>A mass.</summary>
    public QuantityRequest? Weight { get; init; }

    /// <summary>What the kitchen calls it, at most 200 characters.</summary>
    public string? Label { get; init; }

    /// <summary>Factor on every dose of this piece, 0 to 10; 1 if left out.</summary>
    public double? DoseFactor { get; init; }

    /// <summary>True to leave the piece unseasoned.</summary>
    public bool? Skip { get; init; }
}
