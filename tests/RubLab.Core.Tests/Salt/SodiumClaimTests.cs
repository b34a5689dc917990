using RubLab.Core.Quantities;
using RubLab.Core.Salt;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Salt;

public sealed class SodiumClaimTests
{
    [Theory]
    [InlineData("us-sodium-free", 85, 4.999, true)]
    [InlineData("us-sodium-free", 85, 5, false)]
    [InlineData("us-very-low-sodium", 85, 34.9, true)]
    [InlineData("us-very-low-sodium", 85, 35, true)]
    [InlineData("us-very-low-sodium", 85, 35.1, false)]
    [InlineData("us-low-sodium", 85, 139, true)]
    [InlineData("us-low-sodium", 85, 140, true)]
    [InlineData("us-low-sodium", 85, 141, false)]
    [InlineData("eu-low-sodium", 100, 120, true)]
    [InlineData("eu-low-sodium", 100, 120.1, false)]
    [InlineData("eu-very-low-sodium", 100, 40, true)]
    [InlineData("eu-very-low-sodium", 100, 40.1, false)]
    [InlineData("eu-sodium-free", 100, 5, true)]
    [InlineData("eu-sodium-free", 100, 5.1, false)]
    [InlineData("codex-low-sodium", 100, 120, true)]
    [InlineData("codex-very-low-sodium", 100, 40.1, false)]
    [InlineData("codex-sodium-free", 100, 5, true)]
    [InlineData("uk-low-salt", 100, 100, true)]
    [InlineData("uk-low-salt", 100, 100.1, false)]
    public void A_claim_holds_up_to_its_edge(string id, double perGrams, double milligrams, bool allowed)
    {
        var claim = Seed.Catalogue.SodiumClaims.Single(c => c.Id == id);

        Assert.Equal(perGrams, claim.PerGrams);
        Assert.Equal(allowed, claim.Allows(milligrams));
    }

    [Theory]
    [InlineData("us-sodium-free", 4.999, Verdict.Within)]
    [InlineData("us-sodium-free", 5.001, Verdict.Above)]
    [InlineData("us-very-low-sodium", 34.9, Verdict.Within)]
    [InlineData("us-very-low-sodium", 35.1, Verdict.Above)]
    [InlineData("us-low-sodium", 139, Verdict.Within)]
    [InlineData("us-low-sodium", 141, Verdict.Above)]
    [InlineData("eu-low-sodium", 120, Verdict.Within)]
    [InlineData("eu-low-sodium", 120.1, Verdict.Above)]
    [InlineData("codex-very-low-sodium", 40, Verdict.Within)]
    [InlineData("codex-sodium-free", 5.1, Verdict.Above)]
    public void Cooked_meat_is_held_against_the_amount_the_rule_names(string id, double milligrams, Verdict verdict)
    {
        var (claim, measured) = MeasuredFor(id, milligrams, Band.Exact(100));

        Assert.Equal(milligrams, measured.Typical, 1e-9);
        Assert.Equal(verdict, claim.Judge(measured));
    }

    [Theory]
    [InlineData(100, 140, Verdict.Within, Verdict.Within)]
    [InlineData(60, 141, Verdict.CannotTell, Verdict.Within)]
    [InlineData(99.9, 141, Verdict.CannotTell, Verdict.Above)]
    [InlineData(99.9, 300, Verdict.Above, Verdict.Above)]
    public void The_high_end_of_the_band_decides(double typicalKept, double highest, Verdict verdict, Verdict typical)
    {
        // 140 less the last bits: the edge itself is tested on the claim alone.
        var (claim, measured) = MeasuredFor("us-low-sodium", highest == 140 ? 139.999 : highest, new Band(50, typicalKept, 100));

        Assert.Equal((verdict, typical), (claim.Judge(measured), claim.Judge(Band.Exact(measured.Typical))));
    }

    [Fact]
    public void A_portion_is_not_needed_but_a_retention_is()
    {
        Assert.NotNull(Ledger(Meat(50, Band.Exact(100))).SodiumMilligramsPer100GramsEaten);
        Assert.Null(Ledger(Meat(50, Band.Exact(100)) with { Cut = Given.Cut("beef-brisket") with { KeptInCookingPercent = null }, KeptInCookingPercent = null })
            .SodiumMilligramsPer100GramsEaten);
    }

    [Fact]
    public void Warnings_and_reductions_against_another_food_are_no_claims_of_one_food() => Assert.Equal(
        ["codex-low-sodium", "codex-sodium-free", "codex-very-low-sodium", "eu-low-sodium", "eu-sodium-free", "eu-very-low-sodium",
            "uk-low-salt", "us-low-sodium", "us-sodium-free", "us-very-low-sodium"],
        Seed.Catalogue.SodiumClaims.Select(c => c.Id).Order(StringComparer.Ordinal));

    private static (SodiumClaim Claim, Band Measured) MeasuredFor(string id, double milligrams, Band kept)
    {
        var claim = Seed.Catalogue.SodiumClaims.Single(c => c.Id == id);
        return (claim, Ledger(Meat(milligrams / claim.PerGrams * 100, kept)).SodiumMilligramsPer100GramsEaten!.Value.Times(claim.PerGrams / 100));
    }

    // Nothing added and nothing lost in weight, so that the pack's sodium is that of the meat on the plate.
    private static PileLine Meat(double milligramsPer100Grams, Band kept) => Given.Pieces("beef-brisket", 1000) with
    {
        PackSodiumMilligramsPer100Grams = milligramsPer100Grams,
        CookYieldPercent = Band.Exact(100),
        KeptInCookingPercent = kept,
    };

    private static SaltLedger Ledger(PileLine line) => SaltLedger.Of(Given.Pile(line), 0, [], isWeighed: true);
}
