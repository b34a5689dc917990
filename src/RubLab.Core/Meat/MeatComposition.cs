using RubLab.Core.Sources;

namespace RubLab.Core.Meat;

/// <summary>Composition of the raw meat before anything is put on or in.</summary>
public sealed record MeatComposition(double SodiumMilligramsPer100Grams, double? WaterGramsPer100Grams, Citation Citation)
{
    public double? FatGramsPer100Grams { get; init; }
}
