using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Serving;

/// <summary>A stored formula that goes on one cut of a menu.</summary>
public sealed record MenuFormulaRequest
{
    /// <summary>Id of a stored formula.</summary>
    public string? FormulaId { get; init; }

    /// <summary>A revision of it; its latest if left out.</summary>
    public long? Revision { get; init; }

    /// <summary>In place of the formula's own dose.</summary>
    public QuantityRequest? Dose { get; init; }

    /// <summary>What stays on the meat, percent.</summary>
    public EstimateRequest? Retained { get; init; }
}
