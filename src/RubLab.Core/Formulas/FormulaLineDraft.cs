using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;

namespace RubLab.Core.Formulas;

/// <summary>A formula line as far as it could be read: a member that could not is absent and already has its fault.</summary>
/// <param name="Ingredient">The ingredient.</param>
/// <param name="NamedForm">The form, where one was named.</param>
/// <param name="Amount">The number as written.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="NitriteFraction">Sodium nitrite in a cure, 0 to 1.</param>
/// <param name="NitrateFraction">Sodium nitrate in a cure, 0 to 1.</param>
/// <param name="IsAmountLeftOut">No amount was sent at all: the line may make up the rest.</param>
public sealed record FormulaLineDraft(
    Ingredient? Ingredient, IngredientForm? NamedForm, double? Amount, Unit? Unit, double? NitriteFraction, double? NitrateFraction,
    bool IsAmountLeftOut = false)
{
    /// <summary>A content was given and has its own fault already: it is not missing as well.</summary>
    public bool IsCureUnreadable { get; init; }

    /// <summary>Sodium chloride as declared for this line's ingredient, percent of its weight; the ingredient then carries it.</summary>
    public Band? DeclaredSaltPercent { get; init; }
}
