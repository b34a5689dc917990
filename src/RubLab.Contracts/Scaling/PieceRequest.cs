using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Scaling;

/// <summary>One weighed piece.</summary>
/// <remarks>Settable, where other requests are init-only: a pile holds up to 300,000 of these, and the generated reader
/// fills settable members in place instead of boxing each value on its way to a constructor.</remarks>
public sealed record PieceRequest
{
    /// <summary>A mass.</summary>
    public QuantityRequest? Weight { get; set; }

    /// <summary>What the kitchen calls it, at most 200 characters.</summary>
    public string? Label { get; set; }

    /// <summary>Factor on every dose of this piece, 0 to 10; 1 if left out.</summary>
    public double? DoseFactor { get; set; }

    /// <summary>Measured thickness; reckoned from the weight and the cut's shape if left out.</summary>
    public QuantityRequest? Thickness { get; set; }

    /// <summary>What the piece weighs after injection; replaces the estimate of what went in or stayed. With weighedBackIs.</summary>
    public QuantityRequest? WeighedBack { get; set; }

    /// <summary>True to leave the piece unseasoned.</summary>
    public bool? Skip { get; set; }
}
