using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Contracts.Remarks;
using RubLab.Core.Catalogues;
using RubLab.Core.Diffusion;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Timing;

namespace RubLab.Contracts.Timing;

/// <summary>Computes how far salt gets from what was posted.</summary>
public static class SaltingAnswers
{
    // Less than this is no salt; what the series leave there are their last bits.
    private const double Nothing = 1e-9;

    public static Result<SaltingAnswer> Compute(SaltingTimesRequest request, Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(catalogue);
        var log = new FaultLog();
        return SaltingReader.Read(request, catalogue, log.Root) is { } read
            ? log.ResultOf(Written(read, SaltingTimes.Compute(read.Request, catalogue), catalogue))
            : log.ResultOf<SaltingAnswer>(null);
    }

    private static SaltingAnswer Written(SaltingReader read, SaltingTimes times, Catalogue catalogue)
    {
        var findings = new FindingLog(catalogue);
        var body = times.Request.Body;
        var shape = Vocabulary.SaltedShapes[body.Shape];
        var thickness = Figure(body.Dimensions[0].Millimetres, "mm");
        if (read.Piece.IsThicknessFromWeight)
        {
            findings.Add(
                "thickness-from-weight", "/weight", read.Cut!.Shape!.Citation.SourceId, ("cut", read.Cut.Name), ("weight", Rounded.Ledger(read.Piece.Grams!.Value)),
                ("low", thickness.Low), ("high", thickness.High), ("shape", shape));
        }

        SaltingFindings.Notice(times, catalogue.Salting, findings, pointer: null);
        var isBrick = body.Shape == SaltedShape.Brick;
        var response = new SaltingTimesResponse
        {
            Method = Vocabulary.SaltingMethods[times.Request.Method],
            Shape = shape,
            Species = read.Species,
            Cut = read.Cut?.Id,
            Thickness = thickness,
            Width = isBrick ? Figure(body.Dimensions[1].Millimetres, "mm") : null,
            Length = isBrick ? Figure(body.Dimensions[2].Millimetres, "mm") : null,
            FacesTreated = body.Dimensions[0].FacesTreated,
            Reach = Figure(body.Nearest.ReachMillimetres, "mm"),
            Time = new Quantity(Rounded.Exact(times.Request.Hours), "h"),
            Diffusivity = Written(times.Request.Diffusivity),
            Uptake = Figure(times.UptakeFraction.Times(100), "%"),
            LiquidStrength = times.LiquidFraction is { } liquid ? Figure(liquid.Times(100), "%") : null,
            Depth = Figure(times.DepthMillimetres, "mm"),
            CentreToMean = Figure(times.CentreToMean.Times(100), "%"),
            Profile = [.. times.Profile.Select(point => new SaltingPointResponse
            {
                Position = Rounded.Exact(point.Position),
                Relative = PlainBand.From(point.RelativeToMean, RoundingOf(point.RelativeToMean)),
                Layer = isBrick ? PlainBand.From(point.LayerRelativeToMean, RoundingOf(point.LayerRelativeToMean)) : null,
            })],
            TimeTo = new SaltingTimeToResponse
            {
                Half = times.HoursToHalfUptake is { } half ? Figure(half, "h") : null,
                Even50 = Figure(times.HoursToEven50, "h"),
                Even95 = Figure(times.HoursToEven95, "h"),
            },
            Advice = "",
            Findings = FindingResponse.From(findings),
            Cautions = CautionsOf(read, catalogue),
            DataVersion = catalogue.Version,
        };
        return new SaltingAnswer(
            response with { Advice = SaltingAdvice.Of(response, times.Request, catalogue.Salting.Limits, read.Piece.IsThicknessFromWeight) }, times);
    }

    private static SaltingDiffusivityResponse Written(AssumedDiffusivity diffusivity) => new()
    {
        Value = Figure(diffusivity.SquareMetresPerSecond, "m2/s", nothing: 0),
        Temperature = diffusivity.TemperatureCelsius is { } celsius ? new Quantity(Rounded.Exact(celsius), "C") : null,
        MeasuredOn = diffusivity.Reference?.MeasuredOn,
        SourceId = diffusivity.Reference?.Citation.SourceId,
        Locator = diffusivity.Reference?.Citation.Locator,
        Confidence = diffusivity.Reference is { } row ? Vocabulary.Confidences[row.Citation.Confidence] : null,
    };

    private static QuantityBand Figure(Band band, string unit, double nothing = Nothing) => QuantityBand.From(band, unit, RoundingOf(band, nothing));

    // An exact question has an exact answer.
    private static Func<double, double> RoundingOf(Band band, double nothing = Nothing) =>
        value => value < nothing ? 0 : band.IsExact ? Rounded.Exact(value) : Rounded.Estimate(value);

    private static IReadOnlyList<CautionResponse> CautionsOf(SaltingReader read, Catalogue catalogue)
    {
        var kind = read.Cut?.Class ?? catalogue.Cuts.FirstOrDefault(cut => cut.Species == read.Species)?.Class;
        return new CautionSubject(
            [read.Request.Method == SaltingMethod.Soak ? FormulaKind.Soak : FormulaKind.DryBrine], [], kind is null ? [] : [(kind, false)]).Cautions(catalogue);
    }
}
