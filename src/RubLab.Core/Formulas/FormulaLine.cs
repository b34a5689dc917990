using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;

namespace RubLab.Core.Formulas;

/// <summary>One ingredient of a formula, its amount exactly as authored.</summary>
/// <param name="Ingredient">The ingredient.</param>
/// <param name="NamedForm">The form the author named; none when left open.</param>
/// <param name="Amount">The number as written.</param>
/// <param name="Unit">A unit of mass, volume, ratio or parts.</param>
/// <param name="NitriteFraction">Sodium nitrite in a cure, 0 to 1; never assumed.</param>
/// <param name="NitrateFraction">Sodium nitrate in a cure, 0 to 1; never assumed.</param>
public sealed record FormulaLine(
    Ingredient Ingredient, IngredientForm? NamedForm, double Amount, Unit Unit, double? NitriteFraction, double? NitrateFraction)
{
    public IngredientForm Form => NamedForm ?? Ingredient.DefaultForm;
}
