using RubLab.Core.Quantities;
using RubLab.Core.Sources;

namespace RubLab.Core.Ingredients;

/// <summary>A published weight of a household measure, as printed.</summary>
/// <param name="Sequence">Its number in the source's list for the ingredient.</param>
/// <param name="FormId">The form the measure was filled with.</param>
/// <param name="Amount">How many of the unit.</param>
/// <param name="Unit">A unit of volume.</param>
/// <param name="WeightGrams">The printed weight.</param>
/// <param name="RoundingGrams">Half the last printed digit.</param>
/// <param name="Citation">Where it is printed.</param>
public sealed record HouseholdMeasure(
    int Sequence, string FormId, double Amount, Unit Unit, double WeightGrams, double RoundingGrams, Citation Citation)
{
    public double VolumeMillilitres => Unit.ToBase(Amount);

    public double GramsPerMillilitre => WeightGrams / VolumeMillilitres;
}
