using RubLab.Contracts.Outputs;
using RubLab.Contracts.Quantities;
using RubLab.Core.Diffusion;
using RubLab.Core.Timing;

namespace RubLab.Contracts.Timing;

/// <summary>The answer in plain words, from its own figures. What may well be unsalted is not called salted.</summary>
internal static class SaltingAdvice
{
    private const double PerSquareMicrometre = 1e12;

    // Percent of the mean that timeTo.even95 counts as even.
    private const double Even = 95;

    public static string Of(SaltingTimesResponse answer, SaltingRequest request, SaltingLimits limits, bool isThicknessFromWeight)
    {
        var time = PlainNumber.Readable(answer.Time.Value);
        var share = limits.DepthSharePercent == 50 ? "half of" : $"{PlainNumber.Of(limits.DepthSharePercent)} % of";
        var middle = IsClosed(request) ? "closed face" : "middle";
        var place = $"The {middle}, {Range(answer.Reach)} deep, is at {Range(answer.CentreToMean)} of the mean";
        var result = answer.CentreToMean.Low switch
        {
            var low when low < limits.ShallowPercent =>
                $"{time} h salts the outer {Range(answer.Depth)}: there the meat holds {share} its even strength or more. {place}: do not count on it.",
            < Even => $"In {time} h salt has reached the {middle}, but not evenly. {place}.",
            _ => $"{time} h is enough for an even piece. {place}.",
        };
        var evenly = answer.CentreToMean.Low < Even ? $" Evenness to {PlainNumber.Of(Even)} % takes {Range(answer.TimeTo.Even95)} from the start." : "";
        return result + evenly + " " + Rests(answer, request, isThicknessFromWeight);
    }

    private static string Rests(SaltingTimesResponse answer, SaltingRequest request, bool isThicknessFromWeight)
    {
        var spread = request.Diffusivity.SquareMetresPerSecond.Times(PerSquareMicrometre);
        var rounded = QuantityBand.From(spread, "um2/s", Rounded.Estimate);
        var where = answer.Diffusivity.Temperature is { } celsius ? $" at {PlainNumber.Of(celsius.Value)} C" : "";
        var diffusivity = request.Diffusivity.Reference is { } row
            ? $"a diffusivity of {Range(rounded)}{where}, measured on {row.MeasuredOn}"
            : $"the diffusivity given, {Range(rounded)}{where}";
        var thickness = isThicknessFromWeight ? $", and on a thickness of {Range(answer.Thickness)} guessed from the weight" : "";
        var method = request.Method switch
        {
            SaltingMethod.DryBrine => " All of the salt counts as on the meat from the start; what runs off is not counted.",
            SaltingMethod.Soak => " The liquid counts as stirred.",
            _ => " The salt counts as covering the faces all the time.",
        };
        return $"This rests on {diffusivity}{thickness}.{method}";
    }

    /// <summary>Whether the far end of the profile is a face that lets no salt through.</summary>
    internal static bool IsClosed(SaltingRequest request) =>
        request.Body.Shape != SaltedShape.Cylinder && request.Body.Nearest.FacesTreated == 1;

    /// <summary>Both ends, to three digits.</summary>
    internal static string Range(QuantityBand band)
    {
        var (low, high) = (PlainNumber.Of(Shown(band.Low)), PlainNumber.Of(Shown(band.High)));
        return low == high ? $"{low} {band.Unit}" : $"{low} to {high} {band.Unit}";
    }

    // A thousandth is as little as a kitchen measures.
    private static double Shown(double value) => Math.Round(Rounded.Estimate(value), 3);
}
