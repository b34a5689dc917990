using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;

namespace RubLab.Contracts.Brining;

/// <summary>How fast salt spreads in the meat of a soak.</summary>
internal static class SaltSpread
{
    private const double PerSquareMicrometre = 1e12;

    /// <summary>A figure given, exact as it is; else the band of the cut's species, at the liquid's temperature.</summary>
    public static Band? Of(double? given, Cut? cut, double celsius, Catalogue catalogue, FindingLog findings, Place at,
        string cutPointer = "/cut", string temperaturePointer = "/temperature")
    {
        if (given is { } exact)
        {
            return Band.Exact(exact);
        }

        if (cut is null || !catalogue.Salting.TryFindDiffusivity(cut.Species, out var row))
        {
            at.At("diffusivity").Fault("required", "How fast salt travels is not on record for this meat: name a cut, or give diffusivity.");
            return null;
        }

        var band = row.SquareMetresPerSecond;
        if (row.TemperatureCelsius is { } measured && measured != celsius)
        {
            band = band.Times(catalogue.Salting.Speeding(celsius, measured));
            findings.Add("diffusivity-scaled", temperaturePointer, null, ("temperature", measured));
        }

        findings.Add(
            "diffusivity-from-estimate", cutPointer, row.Citation.SourceId, ("species", row.Species),
            ("low", Micrometres(band.Low)), ("typical", Micrometres(band.Typical)), ("high", Micrometres(band.High)));
        if (row.IsStandIn)
        {
            findings.Add("diffusivity-stand-in", cutPointer, row.Citation.SourceId, ("species", row.Species), ("measuredOn", row.MeasuredOn));
        }

        return band;

        static double Micrometres(double squareMetresPerSecond) => Math.Round(squareMetresPerSecond * PerSquareMicrometre, 3);
    }
}
