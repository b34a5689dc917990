namespace RubLab.Contracts.Tests.Brining;

public class InjectionTests
{
    // Pure salt, so that an answer can be worked by hand.
    private const string Water = """/lines = [{"ingredient":"water"},{"ingredient":"sodium-chloride"}]""";

    [Fact]
    public void The_injection_of_the_contract_comes_out()
    {
        var answer = Brine.Answer(Brine.Shoulder);

        // 150 g in 2150 g at 10 % pump, of which 80, 90, 100 % stay: 5.58, 6.28, 6.98 g/kg.
        Assert.Equal("""{"low":5.58,"typical":6.28,"high":6.98,"unit":"g/kg"}""", answer.Of("salt")["perKgGreen"].Text());
        // The same on 1080, 1090 and 1100 g: 5.17, 5.76, 6.34.
        Assert.Equal("""{"low":5.17,"typical":5.76,"high":6.34,"unit":"g/kg"}""", answer.Of("salt")["perKgInjected"].Text());
        // 150 / 2150 x 0.1: what drains does not count.
        Assert.Equal("""{"value":6976.74,"unit":"ppm"}""", answer.Of("salt")["ingoingPpm"].Text());
        // 38,758 mg of sodium in 100 g of table salt is 98.53 g of sodium chloride.
        Assert.Equal(6.19, (double)answer["salt"]!["perKgGreen"]!["typical"]!, 0.005);
        Assert.Equal("""{"value":600,"unit":"g"}""", answer["needed"]!["mass"].Text());
        Assert.Equal("""{"value":2150,"unit":"g"}""", answer["made"]!["mass"].Text());
        Assert.Equal("""{"value":6600,"unit":"g"}""", answer["targetPieceWeight"].Text());
        Assert.Equal("""{"low":6480,"typical":6540,"high":6600,"unit":"g"}""", answer["drainedPieceWeight"].Text());
        Assert.Equal("""{"putIn":{"value":10,"unit":"%"},"afterDraining":{"low":8,"typical":9,"high":10,"unit":"%"}}""", answer["addedSolution"].Text());
        // 147.79 g of sodium chloride in 2000.3 g of water.
        Assert.Equal(6.88, (double)answer["strength"]!["percent"]!, 0.005);
        Assert.Equal(26.07, (double)answer["strength"]!["salometer"]!, 0.02);
        Assert.Equal("""{"value":60,"unit":"F"}""", answer["strength"]!["atTemperature"].Text());
        Assert.NotEmpty(answer["checks"]!.AsArray());
        Assert.DoesNotContain(answer.Of("salt").AsObject(), m => m.Value is null);
        Assert.Equal(["much-left-over"], answer.Codes());
    }

    [Fact]
    public void Volume_is_that_of_a_salt_solution()
    {
        // 10 % at 20 C: 1.0707 g/mL in the table.
        var answer = Brine.Answer(
            Brine.Shoulder,
            """/temperature/value = 20 & /lines = [{"ingredient":"water"},{"ingredient":"sodium-chloride","amount":{"value":10,"unit":"%-of-liquid"}}]""");

        Assert.Equal(600 / 1.0707, (double)answer["needed"]!["volume"]!["value"]!, 0.01);
        Assert.Contains("brine-warm", answer.Codes());
    }

    [Theory]
    [InlineData("sodium-chloride", 9.0)]
    [InlineData("salt", 9.0)]
    public void A_target_is_reached_at_the_typical_retained(string ingredient, double target)
    {
        var answer = Brine.Answer(
            Brine.Shoulder,
            $$"""/lines = [{"ingredient":"water"}] & /targets = [{"ingredient":"{{ingredient}}","reached":{"value":{{target}},"unit":"g/kg"} }]""");

        // c = 9 / (0.1 x 0.9 x 1000) = 10 % of the liquid.
        Assert.Equal(10, (double)answer["lines"]![1]!["share"]!["value"]!, 1e-9);
        Assert.Equal(ingredient, (string)answer["lines"]![1]!["ingredient"]!);
        Assert.True((bool)answer["lines"]![1]!["isSolved"]!);
        Assert.Equal("""{"low":8,"typical":9,"high":10,"unit":"g/kg"}""", answer.Of(ingredient)["perKgGreen"].Text());
        Assert.Equal(["target-in-band"], answer.Codes());
    }

    [Fact]
    public void Several_targets_are_solved_together_and_salt_counts_what_the_others_bring()
    {
        var answer = Brine.Answer(
            Brine.Shoulder,
            """/lines = [{"ingredient":"soy-sauce-shoyu","amount":{"value":10,"unit":"%-of-liquid"}},{"ingredient":"water"},{"ingredient":"sodium-chloride"},{"ingredient":"sugar-granulated"},{"ingredient":"sodium-tripolyphosphate"}] & /targets = [{"ingredient":"sodium-chloride","reached":{"value":8,"unit":"g/kg"}},{"ingredient":"sugar-granulated","reached":{"value":4,"unit":"g/kg"}},{"ingredient":"sodium-tripolyphosphate","reached":{"value":0.3,"unit":"%"}}]""");

        Assert.Equal(8, (double)answer["salt"]!["perKgGreen"]!["typical"]!, 1e-9);
        Assert.Equal(4, (double)answer.Of("sugar-granulated")["perKgGreen"]!["typical"]!, 1e-9);
        Assert.Equal(3, (double)answer.Of("sodium-tripolyphosphate")["perKgGreen"]!["typical"]!, 1e-9);
        Assert.True((double)answer.Of("sodium-chloride")["perKgGreen"]!["typical"]! < 7.5, "The soy sauce brings salt of its own.");
        Assert.Equal(100, answer["lines"]!.AsArray().Sum(l => (double)l!["share"]!["value"]!), 1e-9);
        Assert.Equal(
            ["water", "sodium-tripolyphosphate", "sodium-chloride", "sugar-granulated", "soy-sauce-shoyu"],
            answer["dissolvingOrder"]!.AsArray().Select(i => (string)i!));
        Assert.Contains("phosphate-first", answer.Codes());
        Assert.Contains("float-reads-otherwise", answer.Codes());
    }

    [Fact]
    public void A_line_solved_beside_given_amounts_makes_more_liquid()
    {
        var answer = Brine.Answer(
            Brine.Shoulder,
            """- /lines/1/amount & /targets = [{"ingredient":"salt","reached":{"value":9,"unit":"g/kg"}}]""");

        // 2000 g of water are 90 % of it.
        Assert.Equal(2222.22, (double)answer["made"]!["mass"]!["value"]!);
        Assert.Equal(222.22, (double)answer["lines"]![1]!["made"]!["value"]!);
    }

    [Theory]
    [InlineData("""/loss = {"value":20,"unit":"%"}""", 750)]
    [InlineData("""/loss = {"value":150,"unit":"g"}""", 750)]
    [InlineData("", 600)]
    public void What_is_made_is_what_goes_in_and_what_stays_behind(string loss, double made)
    {
        var answer = Brine.Answer(Brine.Shoulder, string.Join(" & ", ((string[])["""/lines = [{"ingredient":"water"},{"ingredient":"salt","amount":{"value":7,"unit":"%-of-liquid"}}]""", loss]).Where(e => e.Length > 0)));

        Assert.Equal(made, (double)answer["made"]!["mass"]!["value"]!, 1e-9);
        Assert.Equal(600, (double)answer["needed"]!["mass"]!["value"]!);
    }

    [Fact]
    public void Bowls_are_equal()
    {
        var answer = Brine.Answer(Brine.Shoulder, """/bowl = {"value":1,"unit":"kg"}""");

        Assert.Equal(3, (int)answer["made"]!["batches"]!);
        Assert.Equal(716.67, (double)answer["made"]!["batch"]!["mass"]!["value"]!);
        Assert.Equal("""{"value":50,"unit":"g"}""", answer["lines"]![1]!["batch"].Text());
    }

    [Fact]
    public void Pieces_share_the_meat() => Assert.Equal(
        """{"value":1650,"unit":"g"}""", Brine.Answer(Brine.Shoulder, "/pieces = 4")["targetPieceWeight"].Text());

    [Fact]
    public void Each_piece_has_a_weight_to_pump_it_to_and_one_after_draining()
    {
        var answer = Brine.Answer(Brine.Shoulder, """- /meat & /pieceWeights = [{"value":2,"unit":"kg"},{"value":3600,"unit":"g"},{"value":400,"unit":"g"}]""");

        Assert.Equal("""{"value":600,"unit":"g"}""", answer["needed"]!["mass"].Text());
        Assert.Equal("""{"value":2200,"unit":"g"}""", answer["targetPieceWeight"].Text());
        Assert.Equal(
            [
                """{"number":1,"greenWeight":{"value":2000,"unit":"g"},"targetWeight":{"value":2200,"unit":"g"},"drainedWeight":{"low":2160,"typical":2180,"high":2200,"unit":"g"}}""",
                """{"number":2,"greenWeight":{"value":3600,"unit":"g"},"targetWeight":{"value":3960,"unit":"g"},"drainedWeight":{"low":3888,"typical":3924,"high":3960,"unit":"g"}}""",
                """{"number":3,"greenWeight":{"value":400,"unit":"g"},"targetWeight":{"value":440,"unit":"g"},"drainedWeight":{"low":432,"typical":436,"high":440,"unit":"g"}}""",
            ],
            answer["pieces"]!.AsArray().Select(p => p.Text()));
        Assert.Null(Brine.Answer(Brine.Shoulder, "/pieces = 4")["pieces"]);
    }

    [Fact]
    public void By_the_scale_each_piece_is_pumped_as_the_scale_says()
    {
        var answer = Brine.Answer(
            Brine.Shoulder,
            """- /meat & /pieceWeights = [{"value":2,"unit":"kg"},{"value":4,"unit":"kg"}] & /weighedBack = {"green":{"value":5,"unit":"kg"},"pumped":{"value":5600,"unit":"g"} }""");

        Assert.Equal([2240d, 4480d], answer["pieces"]!.AsArray().Select(p => (double)p!["targetWeight"]!["value"]!));
    }

    [Fact]
    public void Nothing_said_of_what_stays_is_all_of_it_with_a_finding()
    {
        var answer = Brine.Answer(Brine.Shoulder, "- /retained");

        Assert.Equal("""{"low":6.98,"typical":6.98,"high":6.98,"unit":"g/kg"}""", answer.Of("salt")["perKgGreen"].Text());
        Assert.Equal(["retained-assumed", "much-left-over"], answer.Codes());
    }

    [Fact]
    public void Nothing_found_after_draining_reaches_nothing_but_is_put_in_all_the_same()
    {
        const string Drained = """/weighedBack = {"green":{"value":5,"unit":"kg"},"drained":{"value":5,"unit":"kg"} }""";
        var answer = Brine.Answer(Brine.Shoulder, Drained);

        Assert.Equal(
            ["/weighedBack/drained nothing-retained"],
            Brine.Faults(Brine.Shoulder, $$"""{{Drained}} & {{Water}} & /targets = [{"ingredient":"sodium-chloride","reached":{"value":5,"unit":"g/kg"} }]"""));
        Assert.Equal(0, (double)answer.Of("salt")["perKgGreen"]!["high"]!);
        Assert.Equal(6976.74, (double)answer.Of("salt")["ingoingPpm"]!["value"]!);
    }

    [Theory]
    [InlineData("""{"value":0,"unit":"%"}""", "/retained nothing-retained")]
    [InlineData("""{"low":0,"typical":0,"high":0,"unit":"%"}""", "/retained nothing-retained")]
    [InlineData("""{"low":0,"typical":0,"high":50,"unit":"%"}""", "/retained nothing-retained")]
    [InlineData("""{"low":0,"typical":1,"high":50,"unit":"%"}""", "")]
    public void What_stays_may_begin_at_nothing_and_no_more_than_begin_there(string retained, string expected) => Assert.Equal(
        expected.Split("; ", StringSplitOptions.RemoveEmptyEntries), Brine.Faults(Brine.Shoulder, $"/retained = {retained}"));

    [Theory]
    [InlineData(""" "pumped":{"value":5600,"unit":"g"} """, 12, 90)]
    [InlineData(""" "drained":{"value":5400,"unit":"g"} """, 10, 80)]
    [InlineData(""" "pumped":{"value":5600,"unit":"g"},"drained":{"value":5450,"unit":"g"} """, 12, 75)]
    [InlineData(""" "drained":{"value":5600,"unit":"g"} """, 12, 100)]
    public void Pieces_weighed_back_replace_the_estimates(string weights, double pump, double retained)
    {
        var answer = Brine.Answer(Brine.Shoulder, $$"""/weighedBack = {"green":{"value":5,"unit":"kg"},{{weights}}}""");

        Assert.Equal(pump, (double)answer["dose"]!["value"]!, 1e-9);
        Assert.Equal(retained, (double)answer["retained"]!["typical"]!, 1e-9);
        Assert.Contains("weighed-back-used", answer.Codes());
    }

    [Fact]
    public void Meat_that_was_injected_is_not_whole_inside()
    {
        var cautions = Brine.Answer(Brine.Shoulder)["cautions"]!.AsArray().Select(c => (string)c!["id"]!).ToList();

        Assert.Contains("injected-not-intact", cautions);
        Assert.Contains("injected-name", cautions);
        Assert.Contains("liquid-once", cautions);
        Assert.DoesNotContain("temperature-red-meat", cautions);
        Assert.DoesNotContain("temperature-poultry", cautions);
    }

    [Fact]
    public void Too_little_liquid_is_noticed() => Assert.Equal(
        ["too-little-made"], Brine.Answer(Brine.Shoulder, """/lines/0/amount/value = 0.4 & /lines/1/amount/value = 30""").Codes());

    // 2150 g are made and 600 go in; 1200 are as much left over as goes in.
    [Theory]
    [InlineData("", 600, 600, 1550)]
    [InlineData("""/loss = {"value":50,"unit":"g"}""", 600, 650, 1500)]
    [InlineData("""/loss = {"value":20,"unit":"%"}""", 600, 750, 1400)]
    [InlineData("/lines/0/amount/value = 1.051", 600, 600, 601)]
    public void More_left_over_than_goes_in_is_noticed(string edits, double injected, double needed, double left)
    {
        var finding = Assert.Single(Brine.Answer(Brine.Shoulder, edits)["findings"]!.AsArray(), f => (string)f!["code"]! == "much-left-over")!;

        Assert.Equal(("info", "/lines"), ((string)finding["severity"]!, (string)finding["pointer"]!));
        Assert.Equal((injected, needed, left), (Of("injected"), Of("needed"), Of("left")));
        Assert.Contains("thrown away", (string)finding["message"]!, StringComparison.Ordinal);

        double Of(string name) => (double)finding["parameters"]![name]!;
    }

    [Theory]
    [InlineData("/lines/0/amount/value = 1.05")]
    [InlineData("""/loss = {"value":1000,"unit":"g"}""")]
    [InlineData("""/lines = [{"ingredient":"water"},{"ingredient":"salt","amount":{"value":7,"unit":"%-of-liquid"}}]""")]
    public void As_much_left_over_as_goes_in_is_not(string edits) => Assert.DoesNotContain("much-left-over", Brine.Answer(Brine.Shoulder, edits).Codes());

    [Theory]
    [InlineData("/dose/value = 100", "pump-high;too-little-made")]
    [InlineData("/dose/value = 20", "")]
    [InlineData("/dose/value = 20.5", "pump-high")]
    [InlineData("- /temperature", "temperature-assumed;much-left-over")]
    [InlineData("""/temperature = {"value":42,"unit":"F"}""", "brine-warm;much-left-over")]
    [InlineData("""/temperature = {"value":41,"unit":"F"}""", "much-left-over")]
    public void What_is_odd_is_noticed(string edits, string expected) => Assert.Equal(
        expected.Split(';', StringSplitOptions.RemoveEmptyEntries), Brine.Answer(Brine.Shoulder, edits).Codes());

    [Fact]
    public void A_liquid_a_little_too_warm_never_reads_as_cold_enough() => Assert.Contains(
        " is at 5.04 C. ",
        Brine.Answer(Brine.Shoulder, """/temperature = {"value":5.04,"unit":"C"}""")["findings"]!.AsArray().Single(f => (string?)f!["code"] == "brine-warm")!["message"]!.GetValue<string>(),
        StringComparison.Ordinal);
}
