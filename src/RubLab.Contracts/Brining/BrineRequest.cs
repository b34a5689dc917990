using RubLab.Contracts.Formulas;
using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Brining;

/// <summary>A liquid to inject, or to soak meat in.</summary>
public sealed record BrineRequest
{
    public const int MostTargets = 20;

    public const int MostPieces = 100_000;

    public const int MostPieceWeights = 2_000;

    /// <summary>injection or soak.</summary>
    public string? Kind { get; init; }

    /// <summary>Cut id; a soak may do without one where meatWater is given.</summary>
    public string? Cut { get; init; }

    /// <summary>What is made of the meat, for the ranges and legal levels that hold; the strictest if left out.</summary>
    public string? Product { get; init; }

    /// <summary>Skin, percent of green weight; the legal levels of bacon are of the weight without it.</summary>
    public QuantityRequest? Skin { get; init; }

    /// <summary>sheet (default): a limited additive above its level is refused; check: it is answered.</summary>
    public string? Purpose { get; init; }

    /// <summary>Green weight of all the meat; required without pieceWeights.</summary>
    public QuantityRequest? Meat { get; init; }

    /// <summary>How many pieces of like weight that is; 1 if left out.</summary>
    public int? Pieces { get; init; }

    /// <summary>Green weight of each piece, in place of meat and pieces: an injection then answers for each.</summary>
    public IReadOnlyList<QuantityRequest?>? PieceWeights { get; init; }

    /// <summary>Liquid per green weight: the pump of an injection, up to 100 %; of a soak in place of liquid.</summary>
    public QuantityRequest? Dose { get; init; }

    /// <summary>Injection: what of the liquid stays in, percent, above 0; only a band may begin there. All of it if left out, with a finding.</summary>
    public EstimateRequest? Retained { get; init; }

    /// <summary>Injection: pieces weighed before and after, in place of the estimates of pump and retained.</summary>
    public WeighedBackRequest? WeighedBack { get; init; }

    /// <summary>Soak: how long; until even if left out, with a finding.</summary>
    public QuantityRequest? Time { get; init; }

    /// <summary>Soak: the liquid, as a mass or a volume; if left out, what the lines come to.</summary>
    public QuantityRequest? Liquid { get; init; }

    /// <summary>Temperature of the liquid, 0 to 40 C; of a refrigerator if left out, with a finding.</summary>
    public QuantityRequest? Temperature { get; init; }

    /// <summary>Written as those of a formula; a line with a target leaves out its amount.</summary>
    public IReadOnlyList<FormulaLineRequest?>? Lines { get; init; }

    /// <summary>What lines are solved for, all at once.</summary>
    public IReadOnlyList<BrineTargetRequest?>? Targets { get; init; }

    /// <summary>What stays in needles, hoses and bowls: percent of what is made, or a mass; none if left out.</summary>
    public QuantityRequest? Loss { get; init; }

    /// <summary>What one bowl holds; the liquid is then made in equal batches.</summary>
    public QuantityRequest? Bowl { get; init; }

    /// <summary>Soak: water in the raw meat, percent; the cut's own if left out.</summary>
    public QuantityRequest? MeatWater { get; init; }

    /// <summary>Soak: sodium chloride in the meat before, g/kg, which a target is not below; none if left out.</summary>
    public QuantityRequest? SaltInMeat { get; init; }

    /// <summary>Soak: measured thickness of a piece, or diameter of a cylinder; from the cut's shape and the weight if left out.</summary>
    public QuantityRequest? Thickness { get; init; }

    /// <summary>Soak, with thickness: slab (default) or cylinder.</summary>
    public string? Shape { get; init; }

    /// <summary>Soak: diffusivity of salt in this meat, m2/s; a band by species and temperature if left out.</summary>
    public QuantityRequest? Diffusivity { get; init; }

    /// <summary>Soak: volume of the vessel up to the top of the meat, for the least liquid that covers it.</summary>
    public QuantityRequest? Vessel { get; init; }
}
