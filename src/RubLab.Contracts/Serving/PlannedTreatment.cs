using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Serving;

/// <summary>A treatment as it would be sent.</summary>
public sealed record PlannedTreatment
{
    /// <summary>Id of a stored formula.</summary>
    public required string FormulaId { get; init; }

    /// <summary>A revision of it; absent for its latest.</summary>
    public long? Revision { get; init; }

    /// <summary>Ids of the pile lines it goes on.</summary>
    public required IReadOnlyList<string> On { get; init; }

    /// <summary>In place of the formula's own dose.</summary>
    public Quantity? Dose { get; init; }

    /// <summary>What stays on the meat.</summary>
    public EstimateResponse? Retained { get; init; }
}
