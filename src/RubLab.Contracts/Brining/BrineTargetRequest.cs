using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Brining;

/// <summary>What is to be reached in the green meat.</summary>
public sealed record BrineTargetRequest
{
    /// <summary>Ingredient id. sodium-chloride counts the salt of every line; any other is grams of that ingredient.</summary>
    public string? Ingredient { get; init; }

    /// <summary>g/kg, % or ppm of the green weight, in the meat at the end.</summary>
    public QuantityRequest? Reached { get; init; }
}
