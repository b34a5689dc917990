using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Timing;

/// <summary>One piece, how it is salted and for how long.</summary>
public sealed record SaltingTimesRequest
{
    public const int MostStages = 50;

    /// <summary>dry-brine, soak or salt-bed.</summary>
    public string? Method { get; init; }

    /// <summary>slab, cylinder or brick. If left out that of the cut; a cut without corners or one round section, a leg say, is taken as a brick.</summary>
    public string? Shape { get; init; }

    /// <summary>From face to face; of a cylinder the diameter. A band from cut and weight if left out.</summary>
    public QuantityRequest? Thickness { get; init; }

    /// <summary>Of a brick; from cut and weight if left out.</summary>
    public QuantityRequest? Width { get; init; }

    /// <summary>Of a brick; from cut and weight if left out.</summary>
    public QuantityRequest? Length { get; init; }

    /// <summary>How many of the two faces across the thickness get salt, 1 or 2; those that are not blocked if left out.</summary>
    public int? FacesTreated { get; init; }

    /// <summary>Faces that let no salt through, a fat cap or skin say: for each the dimension it closes, thickness, width or length. Twice for both faces.</summary>
    public IReadOnlyList<string?>? BlockedFaces { get; init; }

    /// <summary>The animal. If left out that of the cut; not needed where diffusivity is given.</summary>
    public string? Species { get; init; }

    /// <summary>Cut id, in place of species and shape, and with weight in place of thickness.</summary>
    public string? Cut { get; init; }

    /// <summary>Green weight of the piece.</summary>
    public QuantityRequest? Weight { get; init; }

    /// <summary>In their order. Where a time asked for lies beyond them the last one is taken to go on.</summary>
    public IReadOnlyList<SaltingStageRequest?>? Stages { get; init; }

    /// <summary>Soak, and needed there: water of the liquid over water of the meat.</summary>
    public double? LiquidRatio { get; init; }

    /// <summary>Diffusivity of salt in this meat, m2/s, exact; a band by species if left out.</summary>
    public QuantityRequest? Diffusivity { get; init; }

    /// <summary>Where diffusivity holds, and from where it is scaled to the stages; it holds in every stage as it is if left out.</summary>
    public QuantityRequest? DiffusivityAt { get; init; }
}
