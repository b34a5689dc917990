namespace RubLab.Contracts.Tests.Brining;

public class SoakTests
{
    private const string Timed =
        """/time = {"value":24,"unit":"h"} & /thickness = {"value":50,"unit":"mm"} & /diffusivity = {"value":3e-10,"unit":"m2/s"}""";

    [Fact]
    public void Once_even_salt_is_conserved_over_the_water_of_both()
    {
        var answer = Brine.Answer(Brine.Even);

        // 100 x 700 / 1700, and 100 / 1800 of salt and water.
        Assert.Equal("""{"low":41.18,"typical":41.18,"high":41.18,"unit":"g/kg"}""", answer["salt"]!["perKgGreen"].Text());
        Assert.Equal(5.56, (double)answer["soak"]!["evenStrengthPercent"]!);
        Assert.Equal(41.2, (double)answer["soak"]!["takenUp"]!["typical"]!);
        Assert.Equal(1000.0 / 700, (double)answer["soak"]!["waterRatio"]!, 1e-10);
        Assert.Equal(100, (double)answer["soak"]!["evenness"]!["low"]!);
        Assert.Equal(["soak-until-even"], answer.Codes());
        // 100 g on 1000 g of meat and 1100 g of liquid.
        Assert.Equal(47619.05, (double)answer["salt"]!["ingoingPpm"]!["value"]!);
        Assert.Null(answer["targetPieceWeight"]);
        Assert.Null(answer["retained"]);
    }

    [Fact]
    public void Salt_in_the_meat_takes_part()
    {
        // (100 + 17) x 700 / 1700
        var answer = Brine.Answer(Brine.Even, """/saltInMeat = {"value":17,"unit":"g/kg"}""");

        Assert.Equal(48.18, (double)answer["salt"]!["perKgGreen"]!["typical"]!);
        Assert.Equal(41.2, (double)answer["soak"]!["takenUp"]!["typical"]!);
    }

    [Theory]
    // 117 x 700 / 1700; a day of the way there from 17; plain water draws it down to 17 x 700 / 1700.
    [InlineData("", 48.18, 48.18)]
    [InlineData(Timed, 27.79, 27.80)]
    [InlineData("- /lines/1", 7, 7)]
    [InlineData("- /lines/1 & /saltInMeat/value = 30", 12.35, 12.35)]
    public void The_checks_count_the_salt_the_meat_held_before(string edits, double lowest, double highest)
    {
        var answer = Brine.Answer(
            Brine.Even, string.Join(" & ", ((string[])["""/saltInMeat = {"value":17,"unit":"g/kg"} & /cut = "beef-brisket" """, edits]).Where(e => e.Length > 0)));

        var check = answer["checks"]!.AsArray().First(c => (string)c!["base"]! == "green")!;
        Assert.Equal(answer["salt"]!["perKgGreen"].Text(), check["measured"].Text());
        Assert.InRange((double)check["measured"]!["typical"]!, lowest, highest);
    }

    [Fact]
    public void What_is_drawn_out_and_what_is_taken_up_hang_on_one_unknown()
    {
        var answer = Brine.Answer(
            Brine.Even,
            """/saltInMeat = {"value":17,"unit":"g/kg"} & /cut = "beef-brisket" & /thickness = {"value":50,"unit":"mm"} & /time = {"value":24,"unit":"h"}""");

        var check = answer["checks"]!.AsArray().First(c => (string)c!["base"]! == "green")!;
        Assert.True((double)check["measured"]!["low"]! < (double)check["measured"]!["high"]! - 1);
        Assert.Equal(answer["salt"]!["perKgGreen"].Text(), check["measured"].Text());
    }

    [Theory]
    [InlineData(12, false)]
    [InlineData(11.9, true)]
    [InlineData(8, true)]
    public void A_target_below_what_the_meat_holds_is_refused(double target, bool isRefused) => Assert.Equal(
        isRefused ? ["/targets/0/reached already-above"] : [],
        Brine.Faults(
            Brine.Even,
            $$"""- /lines/1/amount & /saltInMeat = {"value":12,"unit":"g/kg"} & /targets = [{"ingredient":"sodium-chloride","reached":{"value":{{target.ToString(System.Globalization.CultureInfo.InvariantCulture)}},"unit":"g/kg"} }]"""));

    [Fact]
    public void Within_a_time_it_is_part_of_the_way()
    {
        // T = 3e-10 x 86400 / 0.025^2 = 0.041472 at a ratio of 1000 / 700: (1 + ratio) (1 - exp(T / ratio^2) erfc(sqrt(T) / ratio)),
        // Crank 4.43, with erfc(0.14255) = 0.84023.
        const double bath = 0.3461;
        var answer = Brine.Answer(Brine.Even, Timed);

        Assert.Equal(100 * bath, (double)answer["soak"]!["evenness"]!["typical"]!, 0.06);
        Assert.Equal(100.0 * 700 / 1700 * bath, (double)answer["salt"]!["perKgGreen"]!["typical"]!, 0.01);
        Assert.Empty(answer.Codes());
    }

    [Fact]
    public void Without_a_diffusivity_the_answer_is_a_band_with_a_finding()
    {
        var timed = Timed.Replace(""" & /diffusivity = {"value":3e-10,"unit":"m2/s"}""", "", StringComparison.Ordinal);
        Assert.Equal(["/diffusivity required"], Brine.Faults(Brine.Even, timed));
        var answer = Brine.Answer(Brine.Even, timed + """ & /cut = "chicken-breast-skinless" & /temperature/value = 5""");

        var evenness = answer["soak"]!["evenness"]!;
        Assert.True((double)evenness["low"]! < (double)evenness["typical"]! && (double)evenness["typical"]! < (double)evenness["high"]!);
        Assert.Contains("diffusivity-from-estimate", answer.Codes());
        Assert.Contains("diffusivity-stand-in", answer.Codes());
        Assert.DoesNotContain("diffusivity-scaled", answer.Codes());
        var colder = Brine.Answer(Brine.Even, timed + """ & /cut = "chicken-breast-skinless" & /temperature/value = 1""");
        Assert.True((double)colder["soak"]!["evenness"]!["typical"]! < (double)evenness["typical"]!);
        Assert.Contains("diffusivity-scaled", colder.Codes());
    }

    [Theory]
    [InlineData("", 20)]
    [InlineData(Timed, 12)]
    [InlineData("""/saltInMeat = {"value":5,"unit":"g/kg"}""", 20)]
    public void A_strength_is_solved_for_a_level_in_the_meat(string edits, double target)
    {
        var solved = Brine.Answer(
            Brine.Even,
            string.Join(" & ", ((string[])[edits, $$"""- /lines/1/amount & /liquid = {"value":1100,"unit":"g"} & /targets = [{"ingredient":"sodium-chloride","reached":{"value":{{target}},"unit":"g/kg"} }]"""]).Where(e => e.Length > 0)));

        Assert.Equal(target, (double)solved["salt"]!["perKgGreen"]!["typical"]!, 0.005);
        Assert.True((bool)solved["lines"]![1]!["isSolved"]!);
    }

    [Fact]
    public void Pieces_weighed_one_by_one_soak_as_those_of_their_mean_weight()
    {
        const string timed = """/cut = "beef-brisket" & /time = {"value":24,"unit":"h"} & """;
        var mean = Brine.Answer(Brine.Even, timed + "/pieces = 2");
        var weighed = Brine.Answer(Brine.Even, timed + """- /meat & /pieceWeights = [{"value":300,"unit":"g"},{"value":700,"unit":"g"}]""");

        Assert.Equal(mean.Text(), weighed.Text());
    }

    [Fact]
    public void Liquid_may_be_a_volume()
    {
        // A litre of 10 % at 20 C is 1070.7 g.
        var answer = Brine.Answer(
            Brine.Even,
            """/temperature/value = 20 & /liquid = {"value":1,"unit":"L"} & /lines = [{"ingredient":"water"},{"ingredient":"sodium-chloride","amount":{"value":10,"unit":"%-of-liquid"}}]""");

        Assert.Equal("""{"value":1070.7,"unit":"g"}""", answer["needed"]!["mass"].Text());
    }

    [Fact]
    public void The_cut_brings_its_own_water_but_not_in_its_bone()
    {
        var answer = Brine.Answer(Brine.Even, """- /meatWater & /cut = "beef-brisket" """);
        // 610.8 g of water in a kilogram of brisket, USDA 13803.
        Assert.Equal(37.92, (double)answer["salt"]!["perKgGreen"]!["typical"]!, 0.006);
        Assert.NotEmpty(answer["checks"]!.AsArray());

        var boned = Brine.Answer(Brine.Even, """- /meatWater & /cut = "chicken-leg" """);
        Assert.Contains("bone-assumed", boned.Codes());
    }

    [Theory]
    [InlineData("""/vessel = {"value":2,"unit":"L"}""", 1.03, 1.03)]
    [InlineData("", 0.322, 0.966)]
    public void The_least_liquid_that_covers_is_what_the_meat_leaves(string vessel, double low, double high)
    {
        // A kilogram of brisket at 1035 kg/m3 is 0.966 L; filling 50 to 75 % of the vessel it leaves as much to a third as much.
        var answer = Brine.Answer(Brine.Even, string.Join(" & ", ((string[])["""/cut = "beef-brisket" """, vessel]).Where(e => e.Length > 0)));

        Assert.Equal(low, (double)answer["soak"]!["leastLiquid"]!["low"]!, 0.005);
        Assert.Equal(high, (double)answer["soak"]!["leastLiquid"]!["high"]!, 0.005);
    }

    [Fact]
    public void Liquid_that_does_not_cover_is_noticed() => Assert.Contains(
        "does-not-cover", Brine.Answer(Brine.Even, """/cut = "beef-brisket" & /liquid = {"value":300,"unit":"mL"}""").Codes());

    [Theory]
    [InlineData("""/retained = {"value":90,"unit":"%"} & /weighedBack = {"green":{"value":5,"unit":"kg"},"drained":{"value":6,"unit":"kg"}}""", "/retained not-for-kind; /weighedBack not-for-kind")]
    [InlineData("- /meatWater", "/cut required")]
    [InlineData("""/liquid = {"value":1,"unit":"L"} & /dose = {"value":100,"unit":"%"}""", "/liquid one-or-the-other")]
    [InlineData("""/liquid = {"value":1,"unit":"cm"}""", "/liquid/unit unit-not-allowed")]
    [InlineData("/meatWater/value = 95", "/meatWater/value out-of-range")]
    [InlineData("""/time = {"value":1,"unit":"d"}""", "/thickness required")]
    [InlineData("""/time = {"value":0,"unit":"d"} & /thickness = {"value":5,"unit":"cm"}""", "/time/value out-of-range")]
    [InlineData("""/shape = "slab" """, "/shape needs-other")]
    [InlineData("""/shape = "ball" & /thickness = {"value":5,"unit":"cm"}""", "/shape unknown-word")]
    [InlineData("""/vessel = {"value":5,"unit":"L"}""", "/vessel needs-other")]
    [InlineData("""/lines = [{"ingredient":"water"},{"ingredient":"salt","amount":{"value":7,"unit":"%-of-liquid"}}]""", "/liquid required")]
    [InlineData("""/lines = [{"ingredient":"oil-olive","amount":{"value":7,"unit":"g"}}]""", "/lines no-water")]
    [InlineData("/lines/1/amount/value = 400", "/lines above-saturation")]
    [InlineData("""/targets = [{"ingredient":"sugar-granulated","reached":{"value":1,"unit":"g/kg"}}]""", "/targets/0/ingredient target-not-for-soak")]
    [InlineData("""/targets = [{"ingredient":"sugar-granulated","reached":{"value":1,"unit":"g/kg"}},{"ingredient":"sodium-chloride","reached":{"value":1,"unit":"g/kg"}}]""", "/targets too-many")]
    [InlineData("""/targets = [{"ingredient":"sodium-chloride","reached":{"value":5,"unit":"g/kg"}}]""", "/targets/0/reached already-above")]
    [InlineData("""- /lines/1/amount & /saltInMeat = {"value":30,"unit":"g/kg"} & /targets = [{"ingredient":"sodium-chloride","reached":{"value":5,"unit":"g/kg"}}]""", "/targets/0/reached already-above")]
    [InlineData("""- /lines/1/amount & /targets = [{"ingredient":"sodium-chloride","reached":{"value":300,"unit":"g/kg"}}]""", "/targets/0/reached target-not-reachable")]
    public void A_soak_is_refused_where_it_is_wrong(string edits, string expected) =>
        Assert.Equal(expected.Split("; "), Brine.Faults(Brine.Even, edits));

    [Fact]
    public void What_a_time_does_not_reach_says_what_it_does()
    {
        var fault = Brine.Compute(
            Brine.Even,
            Timed + """ & - /lines/1/amount & /targets = [{"ingredient":"sodium-chloride","reached":{"value":120,"unit":"g/kg"}}]""").Log.Faults[0];

        // Saturated, 1000 g of water hold 357 g of salt: 147 g/kg once even.
        Assert.Equal("target-not-reachable", fault.Code);
        Assert.Equal(357 * 0.7 / 1.7, (double)fault.Parameters["even"], 0.5);
        Assert.InRange((double)fault.Parameters["reachable"], 20, 119);
    }
}
