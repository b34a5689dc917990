using CsCheck;
using RubLab.Core.Quantities;
using RubLab.Core.Salt;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Salt;

/// <summary>Truths sampled inside every band and recomputed from scratch must lie inside the ledger's bands.</summary>
public sealed class SaltLedgerLaws
{
    private const double LastBits = 1e-11;
    private const int MostParts = 4;

    private static readonly Gen<Band> Percent = Gens.BandOf(20, 100);

    private static readonly Gen<Part> Parts = Gen.Select(
        Gens.BandOf(0.2, 1.5), Gens.BandOf(0, 100), Gen.Double[0, 1], Gen.Double[0.1, 30],
        (density, salt, natural, amount) => new Part(density, salt, (natural * 500) + (393.37 * salt.High), amount));

    private static readonly Gen<Card> Cards = Gen.Select(
        Parts.Array[1, MostParts], Gen.Int[0, 4], Gen.Double[2, 60], Gen.Bool, Percent, Gen.Int[1, 3],
        (parts, manner, dose, redosed, retained, applications) => new Card(parts, manner, dose, redosed, retained, applications));

    private static readonly Gen<Stack> Stacks = Gen.Select(
        Cards.Array[1, 3], Gens.BandOf(45, 100), Percent, Gen.Double[0, 40], Gen.Bool,
        (cards, yield, kept, bone, isWeighed) => new Stack(cards, yield, kept, bone, isWeighed));

    [Fact]
    public void Every_sampled_truth_lies_inside_the_bands() =>
        Law.Holds(Gen.Select(Stacks, Gens.Unit.Array[60]), 20_000, c =>
        {
            var (stack, at) = c;
            var sample = new Sample(at);
            var ledger = stack.Ledger();
            double salt = 0, sodium = 0;
            foreach (var card in stack.Cards)
            {
                var (cardSalt, cardSodium) = card.Truth(sample, stack.IsWeighed);
                salt += cardSalt;
                sodium += cardSodium;
            }

            var (kept, yield) = (sample.Of(stack.Kept), sample.Of(stack.Yield));
            var concentration = kept / yield;
            var own = 0.69 * (1 - (stack.Bone / 100));
            var portion = (sodium + own) * kept / (yield - stack.Bone) * 150;

            Inside(ledger.SaltGramsPerKilogramGreen, salt);
            Inside(ledger.AddedSodiumGramsPerKilogramGreen, sodium);
            Inside(ledger.SaltGramsPerKilogramCooked!.Value, salt * concentration);
            Inside(ledger.SodiumMilligramsPerPortion!.Value, portion);
        });

    [Fact]
    public void The_bands_are_no_wider_than_their_corners() => Law.Holds(Cards, 3_000, card =>
    {
        var unknowns = (2 * card.Parts.Length) + 1;
        double low = double.MaxValue, high = 0;
        for (var corner = 0; corner < 1 << unknowns; corner++)
        {
            var bits = corner;
            var sample = new Sample([.. Enumerable.Range(0, unknowns).Select(i => (double)(bits >> i & 1))]);
            var (salt, _) = card.Truth(sample, isWeighed: false);
            low = Math.Min(low, salt);
            high = Math.Max(high, salt);
        }

        var band = new Stack([card], Band.Exact(60), Band.Exact(80), 0, IsWeighed: false).Ledger().SaltGramsPerKilogramGreen;

        Assert.Equal(low, band.Low, LastBits * (1 + high));
        Assert.Equal(high, band.High, LastBits * (1 + high));
    });

    [Fact]
    public void Salt_and_sodium_of_a_stack_are_those_of_its_treatments_together() => Law.Holds(Stacks, 5_000, stack =>
    {
        var together = stack.Ledger();
        var alone = stack.Cards.Select(card => (stack with { Cards = [card] }).Ledger()).ToList();

        Same(alone.Select(l => l.SaltGramsPerKilogramGreen).Aggregate((a, b) => a.Plus(b)), together.SaltGramsPerKilogramGreen);
        Same(alone.Select(l => l.AddedSodiumGramsPerKilogramGreen).Aggregate((a, b) => a.Plus(b)), together.AddedSodiumGramsPerKilogramGreen);
        Assert.Equal(alone.Sum(l => l.Entries.Count), together.Entries.Count);
        Assert.Equal(together.SaltGramsPerKilogramGreen.Typical, together.Entries.Sum(e => e.SaltGramsPerKilogramGreen.Typical), 1e-9);
    });

    [Fact]
    public void What_is_in_the_meat_is_no_more_than_what_was_put_on() => Law.Holds(Stacks, 5_000, stack =>
    {
        var putOn = stack.Ledger(cards => [.. cards.Select(card => card with { Retained = Band.Exact(100) })]);
        var ledger = stack.Ledger();

        Assert.True(ledger.SaltGramsPerKilogramGreen.High <= putOn.SaltGramsPerKilogramGreen.High * (1 + LastBits));
        Assert.True(ledger.SaltGramsPerKilogramGreen.Low <= putOn.SaltGramsPerKilogramGreen.Low * (1 + LastBits));
    });

    private static void Inside(Band band, double truth) => Assert.InRange(
        truth, band.Low - (LastBits * (1 + band.High)), band.High + (LastBits * (1 + band.High)));

    private static void Same(Band expected, Band actual)
    {
        Assert.Equal(expected.Low, actual.Low, LastBits * (1 + expected.High));
        Assert.Equal(expected.Typical, actual.Typical, LastBits * (1 + expected.High));
        Assert.Equal(expected.High, actual.High, LastBits * (1 + expected.High));
    }

    /// <summary>One point for each unknown, drawn in turn.</summary>
    private sealed class Sample(double[] at)
    {
        private int _next;

        public double Of(Band band) => Gens.Inside(band, at[_next++]);
    }

    private sealed record Part(Band Density, Band Salt, double SodiumMilligramsPer100Grams, double Amount);

    /// <summary>One treatment. The manners: volumes for a weight, volumes with a dose, parts by volume, parts by mass, ratios.</summary>
    private sealed record Card(Part[] Parts, int Manner, double Dose, bool Redosed, Band Retained, int Applications)
    {
        private const double WrittenForKilograms = 2;

        private bool HasOwnDose => Manner is 1 or 2 or 3;

        private bool IsByVolume => Manner <= 2;

        public Treatment Treatment()
        {
            var unit = Manner switch { 0 or 1 => "mL", 2 => "parts-by-volume", 3 => "parts-by-mass", _ => "g/kg" };
            var draft = Given.Draft([.. Parts.Select((p, i) =>
                Given.Line(Given.MadeUp($"part-{i}", p.Density, p.Salt, p.SodiumMilligramsPer100Grams), p.Amount, unit))]);
            draft = HasOwnDose ? draft.Dosed(Dose) : Manner == 0 ? draft.WrittenFor(WrittenForKilograms, "kg") : draft;
            return draft.Ratios().On(0) with
            {
                RetainedPercent = Retained,
                Applications = Applications,
                DoseGramsPerKilogram = Redosed ? Dose / 2 : null,
            };
        }

        /// <summary>Grams of salt and sodium per kilogram, with every unknown at a point: what a cook would truly have put on.</summary>
        public (double Salt, double Sodium) Truth(Sample sample, bool isWeighed)
        {
            var densities = Parts.Select(p => sample.Of(p.Density)).ToArray();
            var salts = Parts.Select(p => sample.Of(p.Salt)).ToArray();
            var kept = sample.Of(Retained) / 100 * Applications;

            // A mix that is weighed out was made up at the typical densities.
            var grams = Parts.Select((p, i) => p.Amount * (!IsByVolume ? 1 : isWeighed ? p.Density.Typical : densities[i])).ToArray();
            var dose = Redosed ? Dose / 2 : HasOwnDose ? Dose : Manner == 0 ? grams.Sum() / WrittenForKilograms : grams.Sum();
            var salt = grams.Select((g, i) => g * salts[i] / 100).Sum() / grams.Sum() * dose;
            var sodium = grams.Select((g, i) => g * Parts[i].SodiumMilligramsPer100Grams / 100_000).Sum() / grams.Sum() * dose;
            return (salt * kept, sodium * kept);
        }
    }

    private sealed record Stack(Card[] Cards, Band Yield, Band Kept, double Bone, bool IsWeighed)
    {
        public SaltLedger Ledger(Func<Card[], Card[]>? changed = null) => SaltLedger.Of(
            Given.Pile(Given.Pieces("beef-brisket", 5000) with
            {
                CookYieldPercent = Yield,
                KeptInCookingPercent = Kept,
                BonePercent = Bone,
                PortionGrams = 150,
            }),
            0,
            [.. (changed is null ? Cards : changed(Cards)).Select(c => c.Treatment())],
            IsWeighed);
    }
}
