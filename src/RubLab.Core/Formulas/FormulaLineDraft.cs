using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;

namespace RubLab.Core.Formulas;

/// <summary>A formula line as far as it could be read: a member that could not is absent and already has its fault.</summary>
public sealed record FormulaLineDraft(
    Ingredient? Ingredient, IngredientForm? NamedForm, double? Amount, Unit? Unit, double? NitriteFraction, double? NitrateFraction);
