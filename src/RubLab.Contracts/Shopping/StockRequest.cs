using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Shopping;

/// <summary>What is on hand of an ingredient.</summary>
public sealed record StockRequest
{
    /// <summary>Ingredient id.</summary>
    public string? Ingredient { get; init; }

    /// <summary>Form id; the ingredient's default if left out.</summary>
    public string? Form { get; init; }

    /// <summary>A mass, or a volume of a form whose density is known.</summary>
    public QuantityRequest? Amount { get; init; }
}
