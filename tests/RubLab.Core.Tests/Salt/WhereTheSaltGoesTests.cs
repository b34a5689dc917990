using CsCheck;
using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
using RubLab.Core.Salt;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Salt;

/// <summary>Meat, juices and what is discarded together are what was put on.</summary>
public sealed class WhereTheSaltGoesTests
{
    private static readonly PileLine Brisket = Given.Pieces("beef-brisket", 5000) with
    {
        CookYieldPercent = Band.Exact(60),
        KeptInCookingPercent = new Band(70, 75, 80),
    };

    private static readonly FormulaDraft TenGrams = Given.Draft(Given.Line("sodium-chloride", null, 10, "g/kg"));

    [Fact]
    public void What_falls_off_is_discarded_and_what_cooks_out_is_in_the_juices()
    {
        var ledger = Of(TenGrams.Ratios().On(0) with { RetainedPercent = new Band(80, 90, 95), Applications = 2 });

        Same(new Band(1, 2, 4), ledger.SaltDiscardedGramsPerKilogramGreen);
        Same(new Band(16 * 0.2, 18 * 0.25, 19 * 0.3), ledger.SaltInJuicesGramsPerKilogramGreen!.Value);
    }

    [Fact]
    public void Juices_that_go_back_leave_nothing_behind() => Assert.Equal(
        Band.Exact(0),
        SaltLedger.Of(Given.Pile(Brisket with { JuicesReturned = true, KeptInCookingPercent = null }), 0, [TenGrams.Ratios().On(0)], isWeighed: true)
            .SaltInJuicesGramsPerKilogramGreen);

    [Fact]
    public void Where_the_retention_in_cooking_is_not_known_neither_is_what_cooks_out() => Assert.Null(
        SaltLedger.Of(
            Given.Pile(Brisket with { KeptInCookingPercent = null, Cut = Given.Cut("beef-brisket") with { KeptInCookingPercent = null } }),
            0, [TenGrams.Ratios().On(0)], isWeighed: true).SaltInJuicesGramsPerKilogramGreen);

    [Fact]
    public void Salt_that_goes_on_after_cooking_does_not_cook_out()
    {
        var before = TenGrams.Ratios().On(0);
        var after = before with { Stage = Stage.After };

        var ledger = Of(before, after);

        Same(new Band(17 / 0.6, 17.5 / 0.6, 18 / 0.6), ledger.SaltGramsPerKilogramCooked!.Value);
        Same(new Band(2, 2.5, 3), ledger.SaltInJuicesGramsPerKilogramGreen!.Value);
        Same(Band.Exact(20), ledger.SaltGramsPerKilogramGreen);
    }

    [Theory]
    [InlineData(RatioBase.Green, null, false)]
    [InlineData(RatioBase.Cooked, null, true)]
    [InlineData(RatioBase.Portion, null, true)]
    [InlineData(RatioBase.Area, null, false)]
    [InlineData(RatioBase.Cooked, Stage.Wrap, false)]
    [InlineData(RatioBase.Green, Stage.After, true)]
    [InlineData(RatioBase.Green, Stage.During, false)]
    public void The_stage_says_whether_it_goes_on_cooked_meat_and_else_the_base(RatioBase ratioBase, Stage? stage, bool isAfter)
    {
        var draft = ratioBase == RatioBase.Area
            ? (Given.Draft(Given.Line("salt", "table", 1, "parts-by-mass")) with { Base = ratioBase }).Dosed(1, "g/100cm2")
            : TenGrams with { Base = ratioBase };
        Assert.Equal(isAfter, (draft.Ratios().On(0) with { Stage = stage }).IsAfterCooking);
    }

    [Fact]
    public void A_line_may_keep_another_part_than_the_rest_of_the_pile()
    {
        var treatment = TenGrams.Ratios().On(0, 1) with
        {
            RetainedPercent = Band.Exact(90),
            RetainedPercentByLine = new Dictionary<int, Band> { [1] = Band.Exact(40) },
        };
        var pile = Given.Pile(Brisket, Brisket with { Id = "second" });

        Same(Band.Exact(9), SaltLedger.Of(pile, 0, [treatment], isWeighed: true).SaltGramsPerKilogramGreen);
        Same(Band.Exact(4), SaltLedger.Of(pile, 1, [treatment], isWeighed: true).SaltGramsPerKilogramGreen);
        Assert.Equal(4, Assert.Single(SaltLedger.Of(pile, 1, [treatment], isWeighed: true).Entries).SaltGramsPerKilogramGreen.Typical, 1e-12);
    }

    [Fact]
    public void Meat_juices_and_discarded_are_what_was_put_on() => Law.Holds(
        Gen.Select(Gen.Double[0.1, 40], Gen.Double[0, 100], Gen.Double[0, 100], Gen.Int[1, 5], Gen.Bool), 5_000, c =>
        {
            var (grams, retained, kept, applications, isAfter) = c;
            var line = Brisket with { KeptInCookingPercent = Band.Exact(kept) };
            var ledger = SaltLedger.Of(
                Given.Pile(line), 0,
                [
                    Given.Draft(Given.Line("sodium-chloride", null, grams, "g/kg")).Ratios().On(0) with
                    {
                        RetainedPercent = Band.Exact(retained),
                        Applications = applications,
                        Stage = isAfter ? Stage.After : Stage.Before,
                    },
                ],
                isWeighed: true);

            var inMeat = ledger.SaltGramsPerKilogramCooked!.Value.Typical * 0.6;
            Assert.Equal(
                grams * applications,
                inMeat + ledger.SaltInJuicesGramsPerKilogramGreen!.Value.Typical + ledger.SaltDiscardedGramsPerKilogramGreen.Typical,
                1e-11 * grams * applications);
        });

    private static SaltLedger Of(params Treatment[] treatments) => SaltLedger.Of(Given.Pile(Brisket), 0, treatments, isWeighed: true);

    private static void Same(Band expected, Band actual)
    {
        Assert.Equal(expected.Low, actual.Low, 1e-9);
        Assert.Equal(expected.Typical, actual.Typical, 1e-9);
        Assert.Equal(expected.High, actual.High, 1e-9);
    }
}
