using RubLab.Core.Formulas;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Scaling;

namespace RubLab.Core.Salt;

/// <summary>Where every gram of salt and sodium of one pile line comes from, per kilogram and per portion.</summary>
public sealed record SaltLedger
{
    private const double MilligramsPerGram = 1000;
    private const double GramsPerKilogram = 1000;

    private SaltLedger()
    {
    }

    public required PileLine Line { get; init; }

    public required IReadOnlyList<LedgerEntry> Entries { get; init; }

    /// <summary>Sodium chloride added and kept, and what is left of the salt that soaking meat was said to hold before.</summary>
    public required Band SaltGramsPerKilogramGreen { get; init; }

    /// <summary>What is weighed as salt and put on, before anything falls off; not the same as sodium chloride.</summary>
    public required double SaltWeighedGramsPerKilogramGreen { get; init; }

    /// <summary>Sodium chloride that ran off, stayed in the bath or was wiped away: put on and not kept.</summary>
    public required Band SaltDiscardedGramsPerKilogramGreen { get; init; }

    /// <summary>Sodium chloride that cooks out with the juices; none where the retention in cooking is not known.</summary>
    public required Band? SaltInJuicesGramsPerKilogramGreen { get; init; }

    /// <summary>Sodium of the same, without the meat's own.</summary>
    public required Band AddedSodiumGramsPerKilogramGreen { get; init; }

    /// <summary>The meat's own sodium before anything is added; none where nobody published it.</summary>
    public required double? OwnSodiumGramsPerKilogramGreen { get; init; }

    /// <summary>Sodium chloride in a kilogram of injected and drained meat; none where nothing is injected.</summary>
    public required Band? SaltGramsPerKilogramInjected { get; init; }

    /// <summary>Salt weighed into ground meat, per kilogram of meat and wet ingredients; none for meat that is not ground.</summary>
    public required double? SaltGramsPerKilogramWetFormulation { get; init; }

    /// <summary>None where yield or retention in cooking is not known.</summary>
    public required Band? SaltGramsPerKilogramCooked { get; init; }

    /// <summary>Added and own sodium in what is eaten; none without a yield and a retention.</summary>
    public required Band? SodiumMilligramsPer100GramsEaten { get; init; }

    /// <summary>Added and own sodium in one portion; none without a portion besides.</summary>
    public Band? SodiumMilligramsPerPortion => Line.PortionGrams is { } portion ? SodiumMilligramsPer100GramsEaten?.Times(portion / 100) : null;

    /// <summary>Salt of centre and end slices over the mean before it has travelled; none without a slice, a weight and a shape.</summary>
    public required SliceConcentration? Slices { get; init; }

    /// <summary>Draws up the ledger of one line of a pile.</summary>
    /// <param name="pile">The pile.</param>
    /// <param name="line">Index of the line.</param>
    /// <param name="treatments">The whole stack; those not on this line are left out.</param>
    /// <param name="isWeighed">The mixes are weighed out; false for a card that is measured in cups as written.</param>
    public static SaltLedger Of(Pile pile, int line, IReadOnlyList<Treatment> treatments, bool isWeighed)
    {
        var pileLine = pile.Lines[line];
        var entries = new List<LedgerEntry>();
        var salt = new Kept();
        var sodium = new Kept();
        var discarded = Band.Exact(0);
        var outside = Band.Exact(0);
        var liquids = new List<(Band Grams, Band SaltPerGram)>();
        double weighed = 0;
        for (var t = 0; t < treatments.Count; t++)
        {
            var treatment = treatments[t];
            if (!treatment.OnLines.Contains(line))
            {
                continue;
            }

            var factor = FactorOf(treatment, pile, line);
            var retained = treatment.RetainedPercentOn(line).Over(100);
            var kept = retained.Times(factor);
            var ratios = treatment.Ratios;
            var isDosed = treatment.DoseGramsPerKilogram is not null;
            var putOn = ratios.GramsPerKilogram(i => i.SaltGramsPerGram, isWeighed, isDosed);
            var inMeat = treatment.SaltBefore?.SaltWith(putOn.Times(factor), retained) ?? putOn.Times(kept);
            salt = salt.With(inMeat, treatment.IsAfterCooking);
            if (ratios.Formula.Kind == FormulaKind.Injection)
            {
                liquids.Add((kept.Times(ratios.DoseGramsPerKilogram), putOn.Over(ratios.DoseGramsPerKilogram)));
            }
            else
            {
                outside = outside.Plus(inMeat);
            }

            var sodiumPutOn = ratios.GramsPerKilogram(i => i.SodiumGramsPerGram, isWeighed, isDosed);
            sodium = sodium.With(
                treatment.SaltBefore?.SodiumWith(sodiumPutOn.Times(factor), retained) ?? sodiumPutOn.Times(kept), treatment.IsAfterCooking);
            discarded = discarded.Plus(putOn.Times(factor).Times(Rest(retained)));
            for (var i = 0; i < ratios.Lines.Count; i++)
            {
                var grams = ratios.RatioOf(i, isWeighed, isDosed);
                var ingredient = ratios.Lines[i].Line.Ingredient;
                weighed += ingredient.IsSalt ? grams.Typical * factor : 0;
                entries.Add(new LedgerEntry(
                    t, ratios.Lines[i].Line, grams.Times(ingredient.SaltGramsPerGram).Times(kept), grams.Times(ingredient.SodiumGramsPerGram).Times(kept)));
            }
        }

        var own = pileLine.RawSodiumMilligramsPer100Grams * 10 / MilligramsPerGram * (1 - pileLine.BoneFraction);
        return new SaltLedger
        {
            Line = pileLine,
            Entries = entries,
            SaltGramsPerKilogramGreen = salt.All,
            SaltDiscardedGramsPerKilogramGreen = discarded,
            SaltInJuicesGramsPerKilogramGreen = pileLine.KeptCountedPercent is { } cooking ? salt.Cooked.Times(Rest(cooking.Over(100))) : null,
            SaltWeighedGramsPerKilogramGreen = weighed,
            AddedSodiumGramsPerKilogramGreen = sodium.All,
            OwnSodiumGramsPerKilogramGreen = own,
            SaltGramsPerKilogramInjected = PerInjected(outside, liquids),
            SaltGramsPerKilogramWetFormulation = WetFormulation.SaltGramsPerKilogram(pile, line, treatments),
            SaltGramsPerKilogramCooked = PerCooked(salt, pileLine),
            SodiumMilligramsPer100GramsEaten = PerHundredGramsEaten(sodium, own, pileLine),
            Slices = SlicesOf(pile, line),
        };
    }

    private static double FactorOf(Treatment treatment, Pile pile, int line)
    {
        var basis = BaseWeight.PerKilogramGreen(treatment.Ratios, pile, line)
            ?? throw new ArgumentException("A treatment's base is not known for this line.", nameof(treatment));
        return treatment.DoseScale * treatment.Applications * basis;
    }

    // A kilogram of green meat with its salt, and the liquids that stay in it with theirs, mixed.
    private static Band? PerInjected(Band outside, List<(Band Grams, Band SaltPerGram)> liquids) => liquids.Count == 0
        ? null
        : Blends.WeightedMean(
            [Band.Exact(GramsPerKilogram), .. liquids.Select(l => l.Grams)],
            [outside.Over(GramsPerKilogram), .. liquids.Select(l => l.SaltPerGram)]).Times(GramsPerKilogram);

    // What is not kept; nothing where more was kept than was planned to go in.
    private static Band Rest(Band fraction) =>
        new(Math.Max(0, 1 - fraction.High), Math.Max(0, 1 - fraction.Typical), Math.Max(0, 1 - fraction.Low));

    private static Band? PerCooked(Kept perGreen, PileLine line) =>
        line is { KeptCountedPercent: { } kept, YieldCountedPercent: { Low: > 0 } yield }
            ? perGreen.Cooked.Times(kept.Over(100)).Plus(perGreen.After).Over(yield.Over(100))
            : null;

    private static Band? PerHundredGramsEaten(Kept added, double? own, PileLine line)
    {
        if (own is not { } natural || line.EdiblePerCooked is not { } edible)
        {
            return null;
        }

        return PerCooked(added.With(Band.Exact(natural), isAfterCooking: false), line)
            ?.Over(edible)
            .Times(MilligramsPerGram / 10);
    }

    // The piece of mean weight stands for the line, and the mean of what was measured for its thickness.
    private static SliceConcentration? SlicesOf(Pile pile, int index)
    {
        var line = pile.Lines[index];
        if (line is not { SliceMillimetres: { } slice, Cut.Shape: { } shape } || line.WeighedGrams.Count == 0)
        {
            return null;
        }

        var mean = pile.GreenGramsIn(index) / line.WeighedGrams.Count;
        return SliceConcentration.Of(shape.Kind, PieceGeometry.Of(shape, mean, line.ThicknessMillimetres?.Average()), slice);
    }

    // What goes through the cooking, and what goes on after it, where nothing cooks out any more.
    private readonly record struct Kept(Band Cooked, Band After)
    {
        public Band All => Cooked.Plus(After);

        public Kept With(Band grams, bool isAfterCooking) =>
            isAfterCooking ? this with { After = After.Plus(grams) } : this with { Cooked = Cooked.Plus(grams) };
    }
}
