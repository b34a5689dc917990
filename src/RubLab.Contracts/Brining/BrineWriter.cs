using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Contracts.Remarks;
using RubLab.Contracts.Salt;
using RubLab.Core.Brining;
using RubLab.Core.Catalogues;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Scaling;

namespace RubLab.Contracts.Brining;

/// <summary>Writes the answer for a liquid.</summary>
internal static class BrineWriter
{
    private const string PureSalt = "sodium-chloride";

    public static BrineResponse Write(
        BrineOutcome outcome, BrineReader read, BrineStack? stack, Catalogue catalogue, FindingLog findings, double madeGrams, double saturated)
    {
        var liquid = outcome.Liquid;
        var batches = read.BowlGrams is { } bowl ? Bowls.Count(madeGrams, bowl) : 1;
        var perGram = liquid.MillilitresPerGram(catalogue.Brines, read.Celsius);
        var checks = stack is null ? [] : SaltLedgerResponse.From(stack.Ledger, stack.Limits, catalogue, findings, "/cut").Checks;
        var piece = read.Pieces.MeatGrams / read.Pieces.Count;
        return new BrineResponse
        {
            Kind = Vocabulary.Brines[read.Kind],
            Dose = outcome.Injection is { } pumped
                ? new Quantity(Rounded.Exact(pumped.PumpPercent), "%")
                : new Quantity(Rounded.Exact(outcome.Soak!.LiquidGramsPerKilogram), "g/kg"),
            Retained = outcome.Injection is { } kept ? QuantityBand.From(kept.RetainedPercent, "%", Rounded.Exact) : null,
            Strength = StrengthOf(liquid, catalogue.Brines.Solution),
            Temperature = new Quantity(Rounded.Exact(read.Celsius), "C"),
            SaturatedPercent = Rounded.Exact(saturated),
            Lines = LinesOf(liquid, read, madeGrams, batches),
            DissolvingOrder = DissolvingOrder.Of(read.Lines.Ingredients).Select(i => read.Lines.Ingredients[i].Id).ToList(),
            Needed = LiquidOf(outcome.NeededGrams, perGram),
            Made = new MadeResponse(Grams(madeGrams), Millilitres(madeGrams * perGram), batches, LiquidOf(madeGrams / batches, perGram)),
            Reached = ReachedOf(outcome, read),
            Salt = Reached(PureSalt, liquid.SaltFraction, outcome, isSalt: true, isAll: true),
            TargetPieceWeight = outcome.Injection is { } target ? Pumped(target, piece) : null,
            DrainedPieceWeight = outcome.Injection is { } drained ? Drained(drained, piece) : null,
            Pieces = outcome.Injection is { } each
                ? read.Pieces.Grams?.Select((grams, i) => new BrinePieceResponse(i + 1, Grams(grams), Pumped(each, grams), Drained(each, grams))).ToList()
                : null,
            AddedSolution = outcome.Injection is { } added
                ? new AddedSolutionResponse(
                    new Quantity(Rounded.Exact(added.AddedSolutionPercent), "%"), QuantityBand.From(added.AddedSolutionAfterDrainingPercent, "%", Rounded.Exact))
                : null,
            Soak = SoakOf(outcome),
            Checks = checks,
            Findings = FindingResponse.From(findings),
            Cautions = BrineFindings.CautionsOf(read, catalogue),
            DataVersion = catalogue.Version,
        };
    }

    private static Quantity Pumped(Injection injection, double grams) => Grams(grams * (1 + (injection.PumpPercent / 100)));

    private static QuantityBand Drained(Injection injection, double grams) =>
        QuantityBand.From(injection.AddedSolutionAfterDrainingPercent.Over(100).Plus(Band.Exact(1)).Times(grams), "g", Rounded.Ledger);

    private static StrengthResponse StrengthOf(Brine liquid, SaltSolution solution)
    {
        var percent = liquid.StrengthPercent;
        return new StrengthResponse
        {
            Percent = Rounded.Ledger(percent),
            Salometer = Rounded.Ledger(solution.SalometerOf(percent)),
            Baume = Math.Round(solution.Baume(percent), 1, MidpointRounding.AwayFromZero),
            SpecificGravity = Math.Round(solution.SpecificGravity(percent), 4, MidpointRounding.AwayFromZero),
            AtTemperature = new Quantity(60, "F"),
        };
    }

    private static List<BrineLineResponse> LinesOf(Brine liquid, BrineReader read, double madeGrams, int batches)
    {
        var lines = new List<BrineLineResponse>();
        for (var i = 0; i < liquid.Shares.Count; i++)
        {
            var line = read.Lines.Formula.Lines[i];
            var isSolved = read.Lines.IsSolved(i);
            lines.Add(new BrineLineResponse
            {
                Ingredient = line.Ingredient.Id,
                Form = line.NamedForm?.Id,
                Amount = isSolved || line.IsRest ? null : new Quantity(line.Amount, line.Unit.Symbol),
                Share = new Quantity(Rounded.Exact(liquid.Shares[i] * 100), "%"),
                Made = Grams(liquid.Shares[i] * madeGrams),
                Batch = Grams(liquid.Shares[i] * madeGrams / batches),
                IsSolved = isSolved,
            });
        }

        return lines;
    }

    private static List<ReachedResponse> ReachedOf(BrineOutcome outcome, BrineReader read)
    {
        var reached = new List<ReachedResponse>();
        foreach (var ingredient in read.Lines.Ingredients.DistinctBy(i => i.Id).Where(i => i.Id != "water"))
        {
            var share = InjectionBrines.ShareOf(ingredient.Id, read.Lines, outcome.Liquid);
            reached.Add(Reached(ingredient.Id, Band.Exact(share), outcome, ingredient.IsSalt, isAll: false));
        }

        return reached;
    }

    private static ReachedResponse Reached(string ingredient, Band share, BrineOutcome outcome, bool isSalt, bool isAll)
    {
        if (outcome.Injection is { } injection)
        {
            return new ReachedResponse
            {
                Ingredient = ingredient,
                PerKgGreen = QuantityBand.From(injection.GramsPerKilogramGreen(share), "g/kg", Rounded.Ledger),
                PerKgInjected = QuantityBand.From(injection.GramsPerKilogramInjected(share), "g/kg", Rounded.Ledger),
                IngoingPpm = Ppm(injection.IngoingPartsPerMillion(share.Typical)),
            };
        }

        // All of the sodium chloride in the meat counts what was there before; a line of salt counts what it brought.
        var soak = outcome.Soak!;
        var put = share.Times(soak.LiquidGramsPerKilogram);
        var inMeat = isAll ? soak.SaltGramsPerKilogram : put.Times(Soak.TakenUp(soak.WaterRatio, soak.Evenness));
        return new ReachedResponse
        {
            Ingredient = ingredient,
            PerKgGreen = isSalt ? QuantityBand.From(inMeat, "g/kg", Rounded.Ledger) : null,
            IngoingPpm = Ppm(put.Typical / (1000 + soak.LiquidGramsPerKilogram) * 1e6),
        };
    }

    private static SoakResponse? SoakOf(BrineOutcome outcome) => outcome.Soak is not { } soak ? null : new SoakResponse
    {
        Evenness = QuantityBand.From(soak.Evenness.Times(100), "%", Rounded.Estimate),
        TakenUp = QuantityBand.From(outcome.InMeatPercent, "%", Rounded.Estimate),
        EvenPerKgGreen = QuantityBand.From(soak.EvenSaltGramsPerKilogram, "g/kg", Rounded.Ledger),
        EvenStrengthPercent = Rounded.Ledger(soak.EvenStrengthPercent),
        WaterRatio = Rounded.Exact(soak.WaterRatio),
        LeastLiquid = outcome.LeastMillilitres is { } least ? QuantityBand.From(least.Over(1000), "L", Rounded.Estimate) : null,
    };

    private static Quantity Grams(double grams) => new(Rounded.Ledger(grams), "g");

    private static Quantity Millilitres(double millilitres) => new(Rounded.Ledger(millilitres), "mL");

    private static Quantity Ppm(double ppm) => new(Rounded.Ledger(ppm), "ppm");

    private static LiquidResponse LiquidOf(double grams, double millilitresPerGram) => new(Grams(grams), Millilitres(grams * millilitresPerGram));
}
