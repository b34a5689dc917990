using RubLab.Contracts.Ingredients;

namespace RubLab.Contracts.Reference;

/// <summary>A grind or crystal of an ingredient.</summary>
public sealed record FormResponse
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    /// <summary>Whether it is meant when no form is named.</summary>
    public required bool IsDefault { get; init; }

    /// <summary>Absent where nobody measured one: the form cannot be asked in cups.</summary>
    public DensityResponse? Density { get; init; }

    /// <summary>The finest grain.</summary>
    public double? SizeLowMicrometres { get; init; }

    /// <summary>The coarsest grain.</summary>
    public double? SizeHighMicrometres { get; init; }

    /// <summary>How it flows; absent where no tapped density was measured.</summary>
    public FlowResponse? Flow { get; init; }
}
