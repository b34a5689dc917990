using RubLab.Contracts.Quantities;
using RubLab.Contracts.Remarks;

namespace RubLab.Contracts.Timing;

/// <summary>How far salt has got by the end of the stages, and how long it needs.</summary>
public sealed record SaltingTimesResponse
{
    /// <summary>How it is salted.</summary>
    public required string Method { get; init; }

    /// <summary>As given, or as taken from the cut.</summary>
    public required string Shape { get; init; }

    /// <summary>Absent where neither species nor cut was given.</summary>
    public string? Species { get; init; }

    /// <summary>Cut id.</summary>
    public string? Cut { get; init; }

    /// <summary>As given, or as taken from the weight.</summary>
    public required QuantityBand Thickness { get; init; }

    /// <summary>Of a brick.</summary>
    public QuantityBand? Width { get; init; }

    /// <summary>Of a brick.</summary>
    public QuantityBand? Length { get; init; }

    /// <summary>Faces across the thickness that get salt.</summary>
    public required int FacesTreated { get; init; }

    /// <summary>From the nearest treated face to the middle, or to the closed face behind it.</summary>
    public required QuantityBand Reach { get; init; }

    /// <summary>All stages together.</summary>
    public required Quantity Time { get; init; }

    /// <summary>The diffusivity that was taken.</summary>
    public required SaltingDiffusivityResponse Diffusivity { get; init; }

    /// <summary>Salt in the meat over the salt in it once even, percent.</summary>
    public required QuantityBand Uptake { get; init; }

    /// <summary>Soak: strength of the liquid over its strength at the start, percent.</summary>
    public QuantityBand? LiquidStrength { get; init; }

    /// <summary>How deep from the nearest treated face the meat holds half of the even strength or more.</summary>
    public required QuantityBand Depth { get; init; }

    /// <summary>The salt of the middle, or of the closed face, over the mean of the piece, percent.</summary>
    public required QuantityBand CentreToMean { get; init; }

    /// <summary>From the middle, or the closed face, to the nearest treated face.</summary>
    public required IReadOnlyList<SaltingPointResponse> Profile { get; init; }

    /// <summary>How long it takes.</summary>
    public required SaltingTimeToResponse TimeTo { get; init; }

    /// <summary>The answer in plain words, and what it rests on.</summary>
    public required string Advice { get; init; }

    public required IReadOnlyList<FindingResponse> Findings { get; init; }

    public required IReadOnlyList<CautionResponse> Cautions { get; init; }

    public required string DataVersion { get; init; }
}
