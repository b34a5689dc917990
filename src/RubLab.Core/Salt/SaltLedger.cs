using RubLab.Core.Ingredients;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Scaling;

namespace RubLab.Core.Salt;

/// <summary>Where every gram of salt and sodium of one pile line comes from, per kilogram and per portion.</summary>
public sealed record SaltLedger
{
    private const double MilligramsPerGram = 1000;

    private SaltLedger()
    {
    }

    public required PileLine Line { get; init; }

    public required IReadOnlyList<LedgerEntry> Entries { get; init; }

    /// <summary>Sodium chloride added and kept.</summary>
    public required Band SaltGramsPerKilogramGreen { get; init; }

    /// <summary>What is weighed as salt and put on, before anything falls off; not the same as sodium chloride.</summary>
    public required double SaltWeighedGramsPerKilogramGreen { get; init; }

    /// <summary>Sodium added and kept, without the meat's own.</summary>
    public required Band AddedSodiumGramsPerKilogramGreen { get; init; }

    /// <summary>The meat's own sodium before anything is added; none where nobody published it.</summary>
    public required double? OwnSodiumGramsPerKilogramGreen { get; init; }

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
        var salt = Band.Exact(0);
        var sodium = Band.Exact(0);
        double weighed = 0;
        for (var t = 0; t < treatments.Count; t++)
        {
            var treatment = treatments[t];
            if (!treatment.OnLines.Contains(line))
            {
                continue;
            }

            var factor = FactorOf(treatment, pile, line);
            var kept = treatment.RetainedCountedPercent.Over(100).Times(factor);
            var ratios = treatment.Ratios;
            var isDosed = treatment.DoseGramsPerKilogram is not null;
            salt = salt.Plus(ratios.GramsPerKilogram(SaltPerGram, isWeighed, isDosed).Times(kept));
            sodium = sodium.Plus(ratios.GramsPerKilogram(SodiumPerGram, isWeighed, isDosed).Times(kept));
            for (var i = 0; i < ratios.Lines.Count; i++)
            {
                var grams = ratios.RatioOf(i, isWeighed, isDosed);
                var ingredient = ratios.Lines[i].Line.Ingredient;
                weighed += ingredient.IsSalt ? grams.Typical * factor : 0;
                entries.Add(new LedgerEntry(
                    t, ratios.Lines[i].Line, grams.Times(SaltPerGram(ingredient)).Times(kept), grams.Times(SodiumPerGram(ingredient)).Times(kept)));
            }
        }

        var own = pileLine.RawSodiumMilligramsPer100Grams * 10 / MilligramsPerGram * (1 - pileLine.BoneFraction);
        return new SaltLedger
        {
            Line = pileLine,
            Entries = entries,
            SaltGramsPerKilogramGreen = salt,
            SaltWeighedGramsPerKilogramGreen = weighed,
            AddedSodiumGramsPerKilogramGreen = sodium,
            OwnSodiumGramsPerKilogramGreen = own,
            SaltGramsPerKilogramCooked = PerCooked(salt, pileLine),
            SodiumMilligramsPer100GramsEaten = PerHundredGramsEaten(sodium, own, pileLine),
            Slices = SlicesOf(pile, line),
        };
    }

    private static Band SaltPerGram(Ingredient ingredient) => ingredient.SaltGramsPer100Grams.Over(100);

    private static Band SodiumPerGram(Ingredient ingredient) =>
        Band.Exact(ingredient.SodiumMilligramsPer100Grams / (100 * MilligramsPerGram));

    private static double FactorOf(Treatment treatment, Pile pile, int line)
    {
        var basis = BaseWeight.PerKilogramGreen(treatment.Ratios, pile, line)
            ?? throw new ArgumentException("A treatment's base is not known for this line.", nameof(treatment));
        return treatment.DoseScale * treatment.Applications * basis;
    }

    private static Band? PerCooked(Band perGreen, PileLine line) =>
        line is { KeptCountedPercent: { } kept, YieldCountedPercent: { Low: > 0 } yield }
            ? perGreen.Times(kept).Over(yield)
            : null;

    private static Band? PerHundredGramsEaten(Band added, double? own, PileLine line)
    {
        if (own is not { } natural || line.BoneFraction >= 1)
        {
            return null;
        }

        return PerCooked(added.Plus(Band.Exact(natural)), line)
            ?.Over(1 - line.BoneFraction)
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
}
