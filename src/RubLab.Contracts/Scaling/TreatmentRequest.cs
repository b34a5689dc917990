using RubLab.Contracts.Formulas;
using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Scaling;

/// <summary>One formula put on the pile: exactly one of <c>formula</c> and <c>formulaId</c>.</summary>
public sealed record TreatmentRequest
{
    public const int MostApplications = 100;

    /// <summary>The formula itself.</summary>
    public FormulaRequest? Formula { get; init; }

    /// <summary>Id of a stored formula.</summary>
    public string? FormulaId { get; init; }

    /// <summary>A revision of the stored formula; its latest if left out.</summary>
    public long? Revision { get; init; }

    /// <summary>Ids of pile lines; all if left out.</summary>
    public IReadOnlyList<string?>? On { get; init; }

    /// <summary>In place of the formula's own dose.</summary>
    public QuantityRequest? Dose { get; init; }

    /// <summary>What stays on the meat, percent, above 0; only a band may begin there. All of it if left out, with a finding.</summary>
    public EstimateRequest? Retained { get; init; }

    /// <summary>How many times it is put on, 1 to 100.</summary>
    public int? Applications { get; init; }

    /// <summary>Of a soak: how long; until it is even if left out, with a finding.</summary>
    public QuantityRequest? Time { get; init; }

    /// <summary>Of an injection or a soak: temperature of the liquid, 0 to 40 C; of a refrigerator if left out, with a finding.</summary>
    public QuantityRequest? Temperature { get; init; }

    /// <summary>Of a soak: all of the liquid, a mass or a volume; in place of a dose.</summary>
    public QuantityRequest? Liquid { get; init; }

    /// <summary>before, during, wrap or after.</summary>
    public string? Stage { get; init; }
}
