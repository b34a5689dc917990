using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Scaling;

/// <summary>What to weigh of one ingredient.</summary>
/// <param name="Ingredient">Ingredient id.</param>
/// <param name="Form">Form id.</param>
/// <param name="Ratio">Per base, after the dose.</param>
/// <param name="ToMix">What to weigh, in whole steps.</param>
/// <param name="RunningTotal">What the scale shows when everything is weighed into one bowl.</param>
/// <param name="Spoon">The same in cups and spoons; absent where the density is not known.</param>
public sealed record SheetLineResponse(
    string Ingredient, string Form, Quantity Ratio, Quantity ToMix, Quantity RunningTotal, SpoonResponse? Spoon);
