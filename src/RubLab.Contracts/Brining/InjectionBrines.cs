using RubLab.Contracts.Quantities;
using RubLab.Core.Brining;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;

namespace RubLab.Contracts.Brining;

/// <summary>Puts together a liquid to inject.</summary>
internal static class InjectionBrines
{
    public static BrineOutcome? Compute(BrineReader read, Catalogue catalogue, double saturated, FindingLog findings, Place at)
    {
        var injection = Pumped(read, catalogue, findings);
        var lines = read.Lines;
        if (lines.Goals.Count > 0 && injection.RetainedPercent.Typical == 0)
        {
            at.At("weighedBack").At("drained").Fault("nothing-retained", "Nothing of the liquid stays, so no strength of it reaches a target.");
            return null;
        }

        var targets = lines.Goals.Select(g => new BrineTarget(g.Line, injection.ShareFor(g.GramsPerKilogram), g.IsSalt)).ToArray();
        var shares = new double[lines.Held.Length];
        var outcome = BrineSolver.Solve(lines.Ingredients, lines.Held, lines.Filling, targets, shares, out var failed);
        if (outcome != BrineSolution.Solved)
        {
            Refuse(outcome, lines, failed, injection, saturated, read.Celsius, at);
            return null;
        }

        var liquid = Brine.Of(lines.Ingredients, shares);
        if (!Brines.Dissolves(liquid, saturated, read.Celsius, SaltTargetAt(lines, at)))
        {
            return null;
        }

        foreach (var goal in lines.Goals)
        {
            var share = goal.IsSalt ? liquid.SaltFraction : Band.Exact(ShareOf(goal.Ingredient.Id, lines, liquid));
            var reached = injection.GramsPerKilogramGreen(share);
            if (!reached.IsExact)
            {
                findings.Add(
                    "target-in-band", $"/targets/{goal.Target}", null, ("ingredient", goal.Ingredient.Name),
                    ("target", Rounded.Ledger(goal.GramsPerKilogram)), ("low", Rounded.Ledger(reached.Low)), ("high", Rounded.Ledger(reached.High)));
            }
        }

        return new BrineOutcome(
            liquid, read.Pieces.MeatGrams * read.DoseGramsPerKilogram!.Value / 1000, injection.RetainedPercent, injection, null, null);
    }

    /// <summary>Grams of one ingredient in a gram of the liquid, over all its lines.</summary>
    public static double ShareOf(string ingredient, BrineLines lines, Brine liquid)
    {
        double share = 0;
        for (var i = 0; i < lines.Ingredients.Count; i++)
        {
            share += lines.Ingredients[i].Id == ingredient ? liquid.Shares[i] : 0;
        }

        return share;
    }

    private static Injection Pumped(BrineReader read, Catalogue catalogue, FindingLog findings)
    {
        var pump = read.WeighedBack?.PumpPercent ?? (read.DoseGramsPerKilogram!.Value / 10);
        var retained = read.RetainedPercent ?? Band.Exact(100);
        if (read.WeighedBack?.KeptPercent is { } kept)
        {
            // More in it than the dose says was put in: then so much at least was.
            pump = Math.Max(pump, kept);
            retained = Band.Exact(Math.Min(100, 100 * kept / pump));
        }
        else if (read.RetainedPercent is null)
        {
            findings.Add("retained-assumed", null, null, ("treatment", BrineLines.Name));
        }

        if (read.WeighedBack is not null)
        {
            findings.Add("weighed-back-used", "/weighedBack", null, ("pump", Rounded.Ledger(pump)), ("retained", Rounded.Ledger(retained.Typical)));
        }

        if (pump > catalogue.Brines.HighestWorkedPumpPercent)
        {
            findings.Add(
                "pump-high", "/dose", catalogue.Brines.HighestWorkedPumpSourceId,
                ("pump", Rounded.Ledger(pump)), ("highest", catalogue.Brines.HighestWorkedPumpPercent));
        }

        return new Injection(pump, retained);
    }

    private static Place SaltTargetAt(BrineLines lines, Place at)
    {
        foreach (var goal in lines.Goals)
        {
            if (goal.Ingredient.IsSalt)
            {
                return at.At("targets").At(goal.Target).At("reached");
            }
        }

        return at.At("lines");
    }

    private static void Refuse(
        BrineSolution outcome, BrineLines lines, int failed, Injection injection, double saturated, double celsius, Place at)
    {
        var goal = lines.Goals.Count > 0 ? lines.Goals[failed] : default;
        var targetAt = at.At("targets").At(goal.Target).At("reached");
        switch (outcome)
        {
            case BrineSolution.AlreadyAbove:
                var other = lines.At(new double[lines.Goals.Count]);
                var share = goal.IsSalt ? other.SaltFraction.Typical : ShareOf(goal.Ingredient.Id, lines, other);
                var already = Rounded.Ledger(injection.GramsPerKilogramGreen(Band.Exact(share)).Typical);
                targetAt.Fault(
                    "already-above", $"The other lines bring {already} g/kg of {goal.Ingredient.Name} by themselves, more than the target.",
                    ("already", already), ("target", Rounded.Ledger(goal.GramsPerKilogram)));
                break;
            case BrineSolution.NoRest when goal.Ingredient.IsSalt:
                targetAt.Fault(
                    "above-saturation",
                    $"So much salt leaves no liquid to dissolve it: at {Rounded.Ledger(celsius)} C no more than {Rounded.Ledger(saturated)} % of salt and water dissolves.",
                    ("saturated", Rounded.Ledger(saturated)), ("temperature", Rounded.Ledger(celsius)));
                break;
            case BrineSolution.NoRest:
                targetAt.Fault("no-rest", "The targets leave no liquid: raise the pump, or reach for less.");
                break;
            default:
                targetAt.Fault("targets-undetermined", "This target hangs on another one: no amounts meet both, or any do. Leave one out.");
                break;
        }
    }
}
