using RubLab.Contracts.Formulas;
using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Sauces;

/// <summary>A sauce to be made: exactly one of <c>formula</c> and <c>formulaId</c>.</summary>
public sealed record SauceRequest
{
    /// <summary>The formula itself, of kind sauce or mop; its dose may be left out, since no meat is asked about.</summary>
    public FormulaRequest? Formula { get; init; }

    /// <summary>Id of a stored formula.</summary>
    public string? FormulaId { get; init; }

    /// <summary>A revision of the stored formula; its latest if left out.</summary>
    public long? Revision { get; init; }

    /// <summary>How far it is boiled down, in place of the formula's own reducedTo.</summary>
    public SauceReductionRequest? Reduce { get; init; }

    /// <summary>Weight of finished sauce wanted; if left out, what the card's own amounts come to, or one kilogram.</summary>
    public QuantityRequest? Make { get; init; }

    /// <summary>What one portion gets: a mass or a volume.</summary>
    public QuantityRequest? Portion { get; init; }

    /// <summary>Density of the finished sauce, where a cup of it was weighed.</summary>
    public QuantityRequest? Density { get; init; }

    /// <summary>The reference amounts to give sodium for; barbecue-sauce and major-condiment if left out.</summary>
    public IReadOnlyList<string?>? ReferenceAmounts { get; init; }
}
