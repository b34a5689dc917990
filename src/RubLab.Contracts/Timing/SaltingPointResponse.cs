using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Timing;

/// <summary>How salty one place is.</summary>
public sealed record SaltingPointResponse
{
    /// <summary>0 in the middle, or at a closed face, to 1 at the treated face.</summary>
    public required double Position { get; init; }

    /// <summary>The salt there over the mean of the piece: 1 is the mean. In a brick on the line halfway up the other dimensions.</summary>
    public required PlainBand Relative { get; init; }

    /// <summary>Of a brick: the whole layer parallel to that face over the mean of the piece.</summary>
    public PlainBand? Layer { get; init; }
}
