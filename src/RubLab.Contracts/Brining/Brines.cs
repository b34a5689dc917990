using RubLab.Contracts.Curing;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Scaling;
using RubLab.Core.Brining;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Remarks;

namespace RubLab.Contracts.Brining;

/// <summary>Computes a liquid to inject or to soak in from what was posted.</summary>
public static class Brines
{
    private const int MostBatches = 1000;

    public static Result<BrineResponse> Compute(BrineRequest request, Catalogue catalogue)
    {
        var log = new FaultLog();
        var at = log.Root;
        var findings = new FindingLog(catalogue);
        if (BrineReader.Read(request, catalogue, findings, at) is not { } read)
        {
            return log.ResultOf<BrineResponse>(null);
        }

        var figures = catalogue.Brines;
        var saturated = figures.Solution.SaturatedPercent(read.Celsius);
        if (request.Temperature is null)
        {
            findings.Add("temperature-assumed", null, null, ("treatment", BrineLines.Name), ("temperature", read.Celsius));
        }
        else if (read.Celsius > figures.ColdHoldingCelsius)
        {
            findings.Add(
                "brine-warm", "/temperature", figures.ColdHoldingSourceId,
                ("treatment", BrineLines.Name), ("temperature", read.Celsius), ("limit", figures.ColdHoldingCelsius));
        }

        var answer = read.Kind == FormulaKind.Soak
            ? SoakBrines.Compute(read, catalogue, saturated, findings, at)
            : InjectionBrines.Compute(read, catalogue, saturated, findings, at);
        if (answer is null)
        {
            return log.ResultOf<BrineResponse>(null);
        }

        var made = Made(answer, read, findings);
        var batches = read.BowlGrams is { } bowl ? Math.Ceiling(made / bowl) : 1;
        if (batches > MostBatches)
        {
            at.At("bowl").Fault("capacity-too-small", $"This would take more than {MostBatches} bowls: give a larger one.", ("most", (double)MostBatches));
            return log.ResultOf<BrineResponse>(null);
        }

        var stack = read.Cut is { } cut ? BrineStack.Of(answer, read, cut, catalogue) : null;
        CheckLimits(stack, read, at);
        if (!log.IsClean)
        {
            return log.ResultOf<BrineResponse>(null);
        }

        BrineFindings.Notice(answer.Liquid, read, catalogue, findings);
        return log.ResultOf(BrineWriter.Write(answer, read, stack, catalogue, findings, made, saturated));
    }

    // What may be weighed from the answer is within every legal level; asked for as a check it is answered all the same.
    private static void CheckLimits(BrineStack? stack, BrineReader read, Place at)
    {
        if (stack is null && read.Lines.Ingredients.Any(i => i.IsCure))
        {
            at.At("cut").Fault("required", "The levels of a cure hang on the meat: name the cut.");
        }

        foreach (var check in stack?.Limits.Where(c => c.IsExceeded && read.Purpose == SheetPurpose.Sheet) ?? [])
        {
            LimitFaults.Note(
                at.At("lines"), check, check.Load.Shares[0], read.Pieces.MeatGrams,
                $"{Figures.Read(check.MeasuredPartsPerMillion!.Value.High, check.Limit.HighPartsPerMillion!.Value)} ppm would go into the meat");
        }
    }

    /// <summary>Notes a liquid that does not dissolve at its temperature.</summary>
    /// <returns>Whether it does.</returns>
    internal static bool Dissolves(Brine liquid, double saturated, double celsius, Place at)
    {
        if (liquid.StrengthPercent <= saturated)
        {
            return true;
        }

        at.Fault(
            "above-saturation",
            $"Salt would be {Rounded.Ledger(liquid.StrengthPercent)} % of salt and water, and at {Rounded.Ledger(celsius)} C no more than {Rounded.Ledger(saturated)} % dissolves.",
            ("strength", Rounded.Ledger(liquid.StrengthPercent)), ("saturated", Rounded.Ledger(saturated)), ("temperature", Rounded.Ledger(celsius)));
        return false;
    }

    // Lines given as amounts say themselves what is made; otherwise what is needed and what stays behind.
    private static double Made(BrineOutcome outcome, BrineReader read, FindingLog findings)
    {
        var wanted = (outcome.NeededGrams / (1 - read.LossFraction)) + read.LossGrams;
        if (read.Lines.TotalGrams([.. outcome.Liquid.Shares]) is not { } given)
        {
            return wanted;
        }

        // Amounts that add up to what is needed, but for the last bits, are enough.
        if (given < wanted * (1 - 1e-9))
        {
            findings.Add(
                "too-little-made", "/lines", null, ("made", Rounded.Ledger(given)), ("needed", Rounded.Ledger(wanted)));
        }
        else if (outcome.Injection is not null && given - wanted > outcome.NeededGrams * (1 + 1e-9))
        {
            findings.Add(
                "much-left-over", "/lines", null, ("made", Rounded.Ledger(given)), ("injected", Rounded.Ledger(outcome.NeededGrams)),
                ("needed", Rounded.Ledger(wanted)), ("left", Rounded.Ledger(given - wanted)));
        }

        return given;
    }
}
