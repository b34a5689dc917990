using RubLab.Contracts.Formulas;
using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Curing;

/// <summary>A cure put on whole pieces, or mixed into ground meat.</summary>
public sealed record CureRequest
{
    /// <summary>The most targets one cure is solved for.</summary>
    public const int MostTargets = 10;

    /// <summary>dry or ground; it must go with the cut.</summary>
    public string? Method { get; init; }

    /// <summary>Cut id.</summary>
    public string? Cut { get; init; }

    /// <summary>Green weight of all the meat.</summary>
    public QuantityRequest? Meat { get; init; }

    /// <summary>What is made of it: some levels are a product's own. Where it is left out, the strictest hold.</summary>
    public string? Product { get; init; }

    /// <summary>Skin, percent of the green weight, which the levels of bacon leave out.</summary>
    public QuantityRequest? Skin { get; init; }

    /// <summary>What goes on or in: a mass, or g/kg, % or ppm of the meat. A line that leaves its amount out is solved for its target.</summary>
    public IReadOnlyList<FormulaLineRequest?>? Lines { get; init; }

    /// <summary>One for each line that leaves its amount out.</summary>
    public IReadOnlyList<CureTargetRequest?>? Targets { get; init; }

    /// <summary>The smallest difference the scale shows; 0.1 g if left out.</summary>
    public QuantityRequest? WeighingStep { get; init; }

    /// <summary>Cooked over green weight, percent.</summary>
    public EstimateRequest? CookYield { get; init; }

    /// <summary>sheet (default) refuses a cure above a legal level; check answers it, with no amounts to weigh.</summary>
    public string? Purpose { get; init; }
}
