using RubLab.Core.Remarks;

namespace RubLab.Core.Timing;

/// <summary>What a cook should know about an answer on salting.</summary>
public static class SaltingFindings
{
    private const double PerSquareMicrometre = 1e12;

    // Degrees that only a change of units makes.
    private const double SameCelsius = 1e-6;

    /// <summary>Notes a middle that is hardly salted, what the diffusivity rests on, and where the warm hours do the work.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="reference">The reference data.</param>
    /// <param name="findings">Takes what is noticed.</param>
    /// <param name="pointer">The request; none where it is the whole document.</param>
    public static void Notice(SaltingTimes answer, SaltingReference reference, FindingLog findings, string? pointer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        ArgumentNullException.ThrowIfNull(reference);
        ArgumentNullException.ThrowIfNull(findings);
        NoticeDepth(answer, reference.Limits, findings, pointer);
        NoticeDiffusivity(answer.Request, findings, pointer);
        NoticeWarmth(answer, reference.Limits, findings, pointer);
    }

    private static void NoticeDepth(SaltingTimes answer, SaltingLimits limits, FindingLog findings, string? pointer)
    {
        // Named by the low end: what may well be unsalted is not called salted.
        if (answer.CentreToMean.Low * 100 < limits.ShallowPercent)
        {
            findings.Add(
                "salting-shallow", pointer, null,
                ("hours", answer.Request.Hours),
                ("low", Math.Round(answer.DepthMillimetres.Low, 1)),
                ("high", Math.Round(answer.DepthMillimetres.High, 1)),
                ("reach", Math.Round(answer.Request.Body.Nearest.ReachMillimetres.Typical, 1)),
                ("share", limits.DepthSharePercent),
                ("centreLow", Math.Round(answer.CentreToMean.Low * 100, 1)),
                ("centreHigh", Math.Round(answer.CentreToMean.High * 100, 1)),
                ("evenLow", Hours(answer.HoursToEven95.Low)),
                ("evenHigh", Hours(answer.HoursToEven95.High)));
        }

        static Said Hours(double hours) => new(Math.Round(hours), Figures.Estimated(hours));
    }

    private static void NoticeDiffusivity(SaltingRequest request, FindingLog findings, string? pointer)
    {
        if (request.Diffusivity.Reference is { } row)
        {
            findings.Add(
                "diffusivity-from-estimate", pointer, row.Citation.SourceId,
                ("species", row.Species),
                ("low", Micrometres(row.SquareMetresPerSecond.Low)),
                ("typical", Micrometres(row.SquareMetresPerSecond.Typical)),
                ("high", Micrometres(row.SquareMetresPerSecond.High)));
            if (row.IsStandIn)
            {
                findings.Add(
                    "diffusivity-stand-in", pointer, row.Citation.SourceId, ("species", row.Species), ("measuredOn", row.MeasuredOn));
            }
        }

        if (request.Diffusivity.TemperatureCelsius is { } celsius && request.Stages.Any(s => s.Hours > 0 && Math.Abs(s.TemperatureCelsius - celsius) > SameCelsius))
        {
            findings.Add("diffusivity-scaled", pointer, null, ("temperature", celsius));
        }

        static double Micrometres(double squareMetresPerSecond) => Math.Round(squareMetresPerSecond * PerSquareMicrometre, 3);
    }

    private static void NoticeWarmth(SaltingTimes answer, SaltingLimits limits, FindingLog findings, string? pointer)
    {
        var warm = answer.Request.Stages.Where(s => s.TemperatureCelsius >= limits.WarmTemperatureCelsius).Sum(s => s.Hours);
        if (answer.WarmShare * 100 > limits.WarmSharePercent && warm < answer.Request.Hours)
        {
            findings.Add(
                "cooker-hours-count", pointer, null,
                ("warmHours", warm),
                ("coldHours", answer.Request.Hours - warm),
                ("share", Math.Round(answer.WarmShare * 100)),
                ("temperature", limits.WarmTemperatureCelsius));
        }
    }
}
