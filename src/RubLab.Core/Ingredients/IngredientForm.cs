namespace RubLab.Core.Ingredients;

/// <summary>A grind or crystal of an ingredient, which fixes its bulk density.</summary>
/// <param name="Id">Unique within the ingredient.</param>
/// <param name="Name">The form in kitchen words.</param>
/// <param name="IsDefault">Taken when a mass is given and no form named.</param>
/// <param name="Density">None where nobody measured one: such a form cannot be asked in cups.</param>
/// <param name="SizeLowMicrometres">Smallest grain, where known.</param>
/// <param name="SizeHighMicrometres">Largest grain, where known.</param>
public sealed record IngredientForm(
    string Id, string Name, bool IsDefault, BulkDensity? Density, double? SizeLowMicrometres, double? SizeHighMicrometres)
{
    /// <summary>How a question asks for it: the name a cook knows and the id a request names.</summary>
    public string NameAndId => $"{Name} ({Id})";

    /// <summary>Density after tapping, where somebody measured it.</summary>
    public double? TappedGramsPerMillilitre { get; init; }

    /// <summary>A thin liquid: it neither heaps nor packs nor clings, so filling a measure with it adds no doubt.</summary>
    public bool FillsLevel { get; init; }

    /// <summary>The geometric middle of its sizes, where they are known.</summary>
    public double? MiddleMicrometres => SizeLowMicrometres is { } low && SizeHighMicrometres is { } high ? Math.Sqrt(low * high) : null;
}
