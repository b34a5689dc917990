using RubLab.Core.Quantities;
using RubLab.Core.Sources;

namespace RubLab.Core.Ingredients;

/// <summary>Mass of a filled measure over its volume, for one form of one ingredient.</summary>
/// <param name="GramsPerMillilitre">Low, typical and high.</param>
/// <param name="Citation">Where it comes from.</param>
/// <param name="WidenedBy">What dominates the width of the band: <c>filling</c>, <c>rounding</c>, <c>measures</c>,
/// <c>source-range</c>, <c>grind</c>, <c>estimate</c> or <c>form</c> when several forms are spanned.</param>
public sealed record BulkDensity(Band GramsPerMillilitre, Citation Citation, string WidenedBy)
{
    /// <summary>The kitchen weighed it itself; then the reference's typical density, where there is one, stands beside it.</summary>
    public bool IsOwn { get; init; }

    /// <summary>What the reference says, where the kitchen's own density took its place.</summary>
    public double? ReferenceGramsPerMillilitre { get; init; }
}
