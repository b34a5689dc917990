using RubLab.Core.Catalogues;
using RubLab.Core.Diffusion;
using RubLab.Core.Quantities;

namespace RubLab.Core.Timing;

/// <summary>
/// How far salt has got by the end of the stages, and how long it needs. Every figure is a band over the diffusivity and the
/// dimensions of the piece; where both are exact so is the answer.
/// </summary>
/// <remarks>Fick's second law with one diffusivity at a time: no swelling, no binding, no flow of juice. See docs/science/salting-time.md.</remarks>
public sealed record SaltingTimes
{
    /// <summary>Places of the profile, both ends included.</summary>
    public const int ProfilePlaces = 21;

    // So much of the least time of all stages is as early as a curve starts; far earlier the last bits take over.
    private const double EarliestShare = 1e-4;

    private SaltingTimes()
    {
    }

    public required SaltingRequest Request { get; init; }

    /// <summary>The salt in the meat over the salt in it once even, 0 to 1. Of a dry brine it is 1 from the start: see <see cref="SaltingMethod.DryBrine"/>.</summary>
    public required Band UptakeFraction { get; init; }

    /// <summary>The strength of the liquid over its strength at the start; of a soak alone.</summary>
    public required Band? LiquidFraction { get; init; }

    /// <summary>How deep from the nearest treated face the meat holds at least the share of the even strength that
    /// <see cref="SaltingLimits.DepthSharePercent"/> names; at most the way to the middle, or to the closed face.</summary>
    public required Band DepthMillimetres { get; init; }

    /// <summary>The salt of the middle (at a closed face, that face) over the mean of the piece, 0 to 1.</summary>
    public required Band CentreToMean { get; init; }

    /// <summary>From the middle, or the closed face, to the nearest treated face.</summary>
    public required IReadOnlyList<ProfilePoint> Profile { get; init; }

    /// <summary>Hours from the start until half of the even uptake; none for a dry brine.</summary>
    public required Band? HoursToHalfUptake { get; init; }

    /// <summary>Hours from the start until the middle holds 50 % of the mean.</summary>
    public required Band HoursToEven50 { get; init; }

    /// <summary>Hours from the start until the middle holds 95 % of the mean.</summary>
    public required Band HoursToEven95 { get; init; }

    /// <summary>The part of the travel done in warm stages, 0 to 1.</summary>
    public required double WarmShare { get; init; }

    // What the answer was read from, kept for curves: a bath is solved once.
    private SaltingSpan Span { get; init; } = null!;

    /// <summary>Computes the answer.</summary>
    /// <param name="request">The question.</param>
    /// <param name="reference">The reference data, for its limits and the viscosity of water.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside <see cref="SaltingReference.Limits"/>, or there is no stage.</exception>
    /// <exception cref="InvalidOperationException">A soak has no water ratio, or something else has one.</exception>
    public static SaltingTimes Compute(SaltingRequest request, SaltingReference reference)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(reference);
        request.Guard(reference.Limits);
        var journey = new Journey(request, reference);
        var span = new SaltingSpan(request, journey, reference.Limits);
        var share = reference.Limits.DepthSharePercent / 100;
        var uptake = span.Rising((field, travel) => field.Uptake(travel));
        var isDryBrine = request.Method == SaltingMethod.DryBrine;
        return new SaltingTimes
        {
            Request = request,
            Span = span,
            UptakeFraction = uptake,
            LiquidFraction = request.WaterRatio is { } ratio
                ? new Band(1 - (uptake.High / (1 + ratio)), 1 - (uptake.Typical / (1 + ratio)), 1 - (uptake.Low / (1 + ratio)))
                : null,
            DepthMillimetres = span.Depth(share),
            CentreToMean = span.Rising((field, travel) => field.CentreToMean(travel)),
            Profile = span.Profile(ProfilePlaces),
            HoursToHalfUptake = isDryBrine ? null : span.Hours(field => field.TravelToUptake(0.5)),
            HoursToEven50 = span.Hours(field => field.TravelToEven(0.5)),
            HoursToEven95 = span.Hours(field => field.TravelToEven(0.95)),
            WarmShare = journey.ShareOf(stage => stage.TemperatureCelsius >= reference.Limits.WarmTemperatureCelsius),
        };
    }

    /// <inheritdoc cref="Compute(SaltingRequest, SaltingReference)"/>
    /// <param name="request">The question.</param>
    /// <param name="catalogue">The edition whose reference data is used.</param>
    public static SaltingTimes Compute(SaltingRequest request, Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        return Compute(request, catalogue.Salting);
    }

    /// <summary>The uptake and the evenness at other hours than the end of the stages, for a curve over time.</summary>
    /// <param name="hours">Each at least a ten thousandth of <see cref="SaltingLimits.LowestHours"/>; beyond the stages the last one goes on.</param>
    /// <exception cref="ArgumentOutOfRangeException">An hour is earlier than that or not finite.</exception>
    public IReadOnlyList<SaltingMoment> Course(IReadOnlyList<double> hours)
    {
        ArgumentNullException.ThrowIfNull(hours);
        return [.. hours.Select(hour => hour >= Span.Limits.LowestHours * EarliestShare && double.IsFinite(hour)
            ? Span.By(hour)
            : throw new ArgumentOutOfRangeException(nameof(hours), hour, "Too early for the figures to mean anything, or no number."))];
    }
}
