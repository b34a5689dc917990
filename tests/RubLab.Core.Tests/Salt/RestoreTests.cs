using CsCheck;
using RubLab.Core.Quantities;
using RubLab.Core.Salt;

namespace RubLab.Core.Tests.Salt;

/// <summary>The grams a check names bring the typical value to the nearer bound, from either side.</summary>
public sealed class RestoreTests
{
    [Fact]
    public void The_grams_to_add_or_take_out_lead_exactly_to_the_nearer_bound() =>
        Law.Holds(Gen.Select(Gen.OneOf(Gen.Double[0.1, 7.4], Gen.Double[15.1, 60]), Gen.Double[50, 100]), 5_000, c =>
        {
            var (grams, retained) = c;
            var check = Roast(grams, retained);
            if (check.RestoreGramsPerKilogram is not { } restore)
            {
                Assert.Equal(Verdict.Within, check.TypicalVerdict);
                return;
            }

            var bound = check.TypicalVerdict == Verdict.Below ? check.Lowest!.Value : check.Highest!.Value;
            Assert.Equal(check.TypicalVerdict == Verdict.Below, restore > 0);
            Assert.Equal(bound, check.Measured!.Value.Typical + restore, 1e-12);

            // What stays on the meat is what counts, so more of it is put on where some falls off.
            Assert.Equal(bound, Roast(grams + (restore / retained * 100), retained).Measured!.Value.Typical, 1e-9);
        });

    [Theory]
    [InlineData(7.5)]
    [InlineData(10)]
    [InlineData(15)]
    public void Inside_the_range_there_is_nothing_to_restore(double grams) => Assert.Null(Roast(grams, 100).RestoreGramsPerKilogram);

    // Pure sodium chloride, so that grams weighed are grams counted.
    private static SaltCheck Roast(double grams, double retained) => SaltCheck.Of(
        SaltLedger.Of(
            Given.Pile(Given.Pieces("beef-brisket", 1000)), 0,
            [Given.Draft(Given.Line("sodium-chloride", null, grams, "g/kg")).Ratios().On(0) with { RetainedPercent = Band.Exact(retained) }], isWeighed: true),
        Seed.Catalogue).Single(check => check.Id == "S25");
}
