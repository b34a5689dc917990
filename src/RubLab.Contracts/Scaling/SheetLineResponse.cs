using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Scaling;

/// <summary>What to weigh of one ingredient.</summary>
/// <param name="Ingredient">Ingredient id.</param>
/// <param name="Form">Form id.</param>
/// <param name="Ratio">Per base.</param>
/// <param name="ToMix">Whole steps of the scale chosen for it.</param>
/// <param name="RunningTotal">What one bowl shows after this line.</param>
/// <param name="Step">The step of that scale; absent where there is one scale only.</param>
/// <param name="Weighings">How often the scale is loaded; absent for once.</param>
/// <param name="Spoon">The same in cups and spoons; absent where the form has no density.</param>
public sealed record SheetLineResponse(
    string Ingredient, string Form, Quantity Ratio, Quantity ToMix, Quantity RunningTotal, Quantity? Step, int? Weighings, SpoonResponse? Spoon);
