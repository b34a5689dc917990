using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Scaling;

/// <summary>What to weigh of one ingredient.</summary>
public sealed record SheetLineResponse(
    string Ingredient, string Form, Quantity Ratio, Quantity ToMix, Quantity RunningTotal, SpoonResponse? Spoon);
