using RubLab.Contracts.Brining;
using RubLab.Core.Brining;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Scaling;

namespace RubLab.Contracts.Scaling;

/// <summary>What each line of a pile takes up of a soak: it stands where an injection has what is retained.</summary>
internal static class SoakUptake
{
    private const double GramsPerKilogram = 1000;

    /// <summary>The treatment with its dose and, line by line, what is taken up; faults are noted where the pile does not say enough.</summary>
    public static Treatment Of(Treatment treatment, Pile pile, Catalogue catalogue, FindingLog findings, Place at)
    {
        var dosed = Dosed(treatment, pile, at);
        if (dosed is null)
        {
            return treatment;
        }

        var liquid = LiquidReader.LiquidOf(dosed.Ratios);
        var taken = new Dictionary<int, Band>();
        if (dosed.Soak!.Minutes is null)
        {
            findings.Add("soak-until-even", at.Pointer, null, ("treatment", treatment.Ratios.Formula.Name));
        }

        foreach (var line in dosed.OnLines)
        {
            var pileLine = pile.Lines[line];
            if (pileLine.Cut.Composition?.WaterGramsPer100Grams is not { } percent)
            {
                at.Fault("meat-water-unknown", $"The water of {pileLine.Cut.Name} is not on record, so what it takes up cannot be told.", ("line", pileLine.Id));
                continue;
            }

            var water = percent * 10 * (1 - pileLine.BoneFraction);
            var ratio = dosed.DoseCounted * liquid.WaterFraction / water;
            if (EvennessOf(dosed, pile, line, ratio, catalogue, findings, at) is { } evenness)
            {
                taken[line] = Soak.TakenUp(ratio, evenness).Times(100);
            }
        }

        return dosed with { RetainedPercentByLine = taken };
    }

    private static Treatment? Dosed(Treatment treatment, Pile pile, Place at)
    {
        if (treatment.Soak?.LiquidGrams is not { } liquid)
        {
            return treatment;
        }

        var meat = treatment.OnLines.Sum(line => Meat(pile, line));
        if (meat > 0)
        {
            return treatment with { DoseGramsPerKilogram = liquid / meat * GramsPerKilogram };
        }

        at.At("liquid").Fault("needs-other", "How much liquid there is for the meat needs the weights of the meat: give a dose instead.");
        return null;
    }

    private static double Meat(Pile pile, int line)
    {
        double sum = 0;
        var greens = pile.GreenGramsOf(line);
        var factors = pile.DoseFactorsOf(line);
        for (var piece = 0; piece < greens.Length; piece++)
        {
            sum += greens[piece] * factors[piece];
        }

        return sum;
    }

    private static Band? EvennessOf(
        Treatment treatment, Pile pile, int line, double waterRatio, Catalogue catalogue, FindingLog findings, Place at)
    {
        if (treatment.Soak!.Minutes is not { } minutes)
        {
            return Band.Exact(1);
        }

        var pileLine = pile.Lines[line];
        if (pileLine.Cut.Shape is not { } shape)
        {
            at.At("time").Fault("base-unknown", $"{pileLine.Cut.Name} has no shape on record, so how far salt gets in a time cannot be told.", ("line", pileLine.Id));
            return null;
        }

        if (SaltSpread.Of(null, pileLine.Cut, treatment.LiquidCelsius!.Value, catalogue, findings, at, at.Pointer, at.At("temperature").Pointer) is not { } diffusivity)
        {
            return null;
        }

        // The piece of mean weight stands for its line; without weights, pieces of the cut's usual thickness do.
        var geometry = pileLine.WeighedGrams.Count > 0
            ? SoakGeometry.Of(PieceGeometry.Of(shape, pile.GreenGramsIn(line) / pileLine.WeighedGrams.Count, pileLine.ThicknessMillimetres?.Average()))
            : new SoakGeometry(shape.ThicknessMillimetres.Over(2), IsCylinder: false);
        return Soak.EvennessAfter(waterRatio, geometry, diffusivity, minutes);
    }
}
