using RubLab.Contracts.Quantities;
using RubLab.Core.Brining;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;

namespace RubLab.Contracts.Brining;

/// <summary>Puts together a liquid to soak meat in.</summary>
internal static class SoakBrines
{
    private const int Halvings = 60;

    public static BrineOutcome? Compute(BrineReader read, Catalogue catalogue, double saturated, FindingLog findings, Place at)
    {
        var bath = SoakBath.Of(read, catalogue, findings, at);
        var lines = read.Lines;
        var liquid = lines.Goals.Count switch
        {
            0 => lines.At([]),
            1 => Solved(bath, read, saturated, at),
            _ => TooMany(at),
        };
        if (bath is null || liquid is null)
        {
            return null;
        }

        if (!(liquid.WaterFraction > 0))
        {
            at.At("lines").Fault("no-water", "The liquid has no water, in which salt would move.");
            return null;
        }

        if (!Brines.Dissolves(liquid, saturated, read.Celsius, at.At("lines")))
        {
            return null;
        }

        var soak = bath.With(liquid);
        foreach (var goal in lines.Goals)
        {
            var level = soak.SaltGramsPerKilogram;
            if (!level.IsExact)
            {
                findings.Add(
                    "target-in-band", $"/targets/{goal.Target}", null, ("ingredient", goal.Ingredient.Name),
                    ("target", Rounded.Ledger(goal.GramsPerKilogram)), ("low", Rounded.Ledger(level.Low)), ("high", Rounded.Ledger(level.High)));
            }
        }

        var needed = bath.LiquidGrams(liquid);
        return new BrineOutcome(
            liquid, needed, Soak.TakenUp(soak.WaterRatio, soak.Evenness).Times(100), null, soak, Cover(read, catalogue, liquid, needed, findings));
    }

    private static Brine? TooMany(Place at)
    {
        at.At("targets").Fault("too-many", "A soak is solved for salt alone: give one target.", ("most", 1d));
        return null;
    }

    private static Brine? Solved(SoakBath? bath, BrineReader read, double saturated, Place at)
    {
        var lines = read.Lines;
        var goal = lines.Goals[0];
        var targetAt = at.At("targets").At(goal.Target);
        if (!goal.Ingredient.IsSalt)
        {
            targetAt.At("ingredient").Fault(
                "target-not-for-soak", $"How much {goal.Ingredient.Name} gets into soaking meat is not known; only salt is solved for.", ("ingredient", goal.Ingredient.Id));
            return null;
        }

        if (bath is null)
        {
            return null;
        }

        var salt = goal.GramsPerKilogram * (goal.IsSalt ? 1 : goal.Ingredient.SaltGramsPer100Grams.Typical / 100);
        var before = read.Soak!.SaltInMeatGramsPerKilogram;
        if (salt < before)
        {
            targetAt.At("reached").Fault(
                "already-above",
                $"The meat holds {Rounded.Ledger(before)} g/kg of salt already, more than the target. A liquid that draws salt out is not solved for: give its lines their amounts.",
                ("already", Rounded.Ledger(before)), ("target", Rounded.Ledger(salt)));
            return null;
        }

        var highest = Dissolving(lines, saturated);
        if (!(lines.At([0]).WaterFraction > 0))
        {
            at.At("lines").Fault("no-water", "The liquid has no water, in which salt would move.");
            return null;
        }

        if (SoakTarget.ShareFor(share => bath.With(lines.At([share])), highest, salt, out var reachable) is { } solved)
        {
            return lines.At([solved]);
        }

        if (salt < reachable.Low)
        {
            targetAt.At("reached").Fault(
                "already-above", $"Without this line the meat already comes to {Rounded.Ledger(reachable.Low)} g/kg of salt, more than the target.",
                ("already", Rounded.Ledger(reachable.Low)), ("target", Rounded.Ledger(salt)));
            return null;
        }

        var even = Rounded.Ledger((bath.With(lines.At([highest])) with { Evenness = Band.Exact(1) }).SaltGramsPerKilogram.Typical);
        var within = Rounded.Ledger(reachable.High);
        targetAt.At("reached").Fault(
            "target-not-reachable",
            $"Even saturated the liquid brings {within} g/kg of salt in this time, and {even} g/kg once even. Use more liquid, more time, or thinner pieces.",
            ("reachable", within), ("even", even), ("target", Rounded.Ledger(salt)), ("saturated", Rounded.Ledger(saturated)));
        return null;
    }

    // The largest share of the free line that dissolves.
    private static double Dissolving(BrineLines lines, double saturated)
    {
        double low = 0, high = 1;
        foreach (var held in lines.Held)
        {
            high -= held;
        }

        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            if (lines.At([middle]).StrengthPercent <= saturated)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return low;
    }

    private static Band? Cover(BrineReader read, Catalogue catalogue, Brine liquid, double neededGrams, FindingLog findings)
    {
        if (read.Cut?.Shape is not { } shape)
        {
            return null;
        }

        var figures = catalogue.Brines;
        var meat = PieceGeometry.Of(shape, read.Pieces.MeatGrams, null).VolumeCubicCentimetres;
        var least = read.Soak!.VesselMillilitres is { } vessel
            ? Band.Exact(Math.Max(0, Covering.LeastMillilitres(meat, vessel)))
            : Covering.LeastMillilitres(meat, figures.StackedFilledPercent);
        var volume = neededGrams * liquid.MillilitresPerGram(figures, read.Celsius);
        if (volume < least.Typical)
        {
            findings.Add(
                "does-not-cover", "/liquid", read.Soak.VesselMillilitres is null ? figures.StackedFilledSourceId : null,
                ("liquid", Rounded.Estimate(volume / 1000)), ("low", Rounded.Estimate(least.Low / 1000)), ("high", Rounded.Estimate(least.High / 1000)));
        }

        return least;
    }
}
