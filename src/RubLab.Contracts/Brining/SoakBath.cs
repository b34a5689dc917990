using RubLab.Core.Brining;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;

namespace RubLab.Contracts.Brining;

/// <summary>All of a soak but the strength of its liquid.</summary>
internal sealed record SoakBath
{
    private SoakBath()
    {
    }

    private BrineReader Read { get; init; } = null!;

    private BrineFigures Figures { get; init; } = null!;

    private SoakGeometry? Geometry { get; init; }

    private Band Diffusivity { get; init; }

    public static SoakBath? Of(BrineReader read, Catalogue catalogue, FindingLog findings, Place at)
    {
        var soak = read.Soak!;
        if (read.DoseGramsPerKilogram is null && soak is { LiquidGrams: null, LiquidMillilitres: null } && read.Lines.GivenGrams is null)
        {
            at.At("liquid").Fault("required", "How much liquid? Give liquid, dose, or lines in masses and volumes.");
            return null;
        }

        if (soak.BonePercent is { } bone)
        {
            findings.Add("bone-assumed", "/cut", read.Cut!.BonePercent!.Citation.SourceId, ("line", read.Cut.Name), ("typical", bone.Typical), ("low", bone.Low), ("high", bone.High));
        }

        if (soak.Minutes is null)
        {
            findings.Add("soak-until-even", null, null, ("treatment", BrineLines.Name));
            return new SoakBath { Read = read, Figures = catalogue.Brines };
        }

        if (SaltSpread.Of(soak.SquareMetresPerSecond, read.Cut, read.Celsius, catalogue, findings, at) is not { } diffusivity)
        {
            return null;
        }

        return new SoakBath
        {
            Read = read,
            Figures = catalogue.Brines,
            Geometry = soak.ThicknessMillimetres is { } thickness
                ? SoakGeometry.Measured(thickness, soak.IsCylinder)
                : SoakGeometry.Of(PieceGeometry.Of(read.Cut!.Shape!, read.Pieces.MeatGrams / read.Pieces.Count, null)),
            Diffusivity = diffusivity,
        };
    }

    /// <summary>The liquid around all the meat, grams.</summary>
    public double LiquidGrams(Brine liquid)
    {
        var soak = Read.Soak!;
        return soak.LiquidGrams
            ?? (soak.LiquidMillilitres / liquid.MillilitresPerGram(Figures, Read.Celsius))
            ?? (Read.DoseGramsPerKilogram * Read.Pieces.MeatGrams / 1000)
            ?? Read.Lines.TotalGrams([.. liquid.Shares])!.Value;
    }

    /// <summary>The soak in a liquid that has some water.</summary>
    public Soak With(Brine liquid)
    {
        var soak = new Soak
        {
            LiquidGramsPerKilogram = LiquidGrams(liquid) / Read.Pieces.MeatGrams * 1000,
            Liquid = liquid,
            MeatWaterGramsPerKilogram = Read.Soak!.MeatWaterGramsPerKilogram,
            SaltInMeatGramsPerKilogram = Read.Soak.SaltInMeatGramsPerKilogram,
        };
        return Geometry is null
            ? soak
            : soak with { Evenness = Soak.EvennessAfter(soak.WaterRatio, Geometry, Diffusivity, Read.Soak.Minutes!.Value) };
    }
}
