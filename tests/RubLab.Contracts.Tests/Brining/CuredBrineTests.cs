namespace RubLab.Contracts.Tests.Brining;

/// <summary>A cure in a liquid: legal levels count all of it, and hold for what may be weighed.</summary>
public sealed class CuredBrineTests
{
    // 10 % of a liquid of 3.2 % cure at 6.25 %: 200 ppm.
    private const string Pickle =
        """
        {"kind":"injection","cut":"pork-leg","product":"other","meat":{"value":5,"unit":"kg"},"dose":{"value":10,"unit":"%"},"retained":{"value":60,"unit":"%"},"temperature":{"value":3,"unit":"C"},
         "lines":[{"ingredient":"water"},{"ingredient":"salt","form":"table","amount":{"value":8,"unit":"%-of-liquid"} },{"ingredient":"cure-6-25","amount":{"value":3.2,"unit":"%-of-liquid"} }] }
        """;

    [Fact]
    public void At_the_level_it_is_answered_with_its_check_whatever_drains()
    {
        var check = Brine.Answer(Pickle)["checks"]!.AsArray().Single(c => (string)c!["id"]! == "nitrite-injection")!;
        Assert.Equal(("within", 200), ((string)check["verdict"]!, (double)check["measured"]!["typical"]!));
    }

    [Theory]
    [InlineData("/lines/2/amount/value = 3.3", "/lines limit-exceeded")]
    [InlineData("- /product", "/lines limit-exceeded")]
    [InlineData("""/lines/2 = {"ingredient":"curing-salt","amount":{"value":3,"unit":"%-of-liquid"} }""", "/lines/2/nitriteFraction cure-content-unknown")]
    [InlineData("/lines/2/nitriteFraction = 0.01 & /lines/2/amount/value = 10", "/lines/2/nitriteFraction cure-content-contradicted")]
    [InlineData("""/product = "pudding" """, "/product unknown-product")]
    public void Above_it_or_undeclared_it_is_refused(string edits, string expected) => Assert.Contains(expected, Brine.Faults(Pickle, edits));

    [Fact]
    public void Above_it_says_by_how_many_grams()
    {
        // 4 % at 6.25 % by a tenth is 250 ppm; 50 ppm of 5 kg.
        var fault = Assert.Single(Brine.Compute(Pickle, "/lines/2/amount/value = 4").Log.Faults);
        Assert.Equal(0.25, (double)fault.Parameters["overGrams"], 1e-9);
    }

    [Fact]
    public void Asked_for_as_a_check_it_is_answered()
    {
        var checks = Brine.Answer(Pickle, """/lines/2/amount/value = 4 & /purpose = "check" """)["checks"]!.AsArray();
        Assert.Equal("above", (string)checks.Single(c => (string)c!["id"]! == "nitrite-injection")!["verdict"]!);
    }

    [Fact]
    public void A_cured_soak_of_seven_days_is_not_told_of_two()
    {
        var cautions = Brine.Answer(
            Pickle, """/kind = "soak" & - /retained & /dose/value = 50 & /time = {"value":7,"unit":"d"} & /lines/2/amount/value = 0.2""")["cautions"]!.AsArray().Select(c => (string)c!["id"]!).ToList();

        Assert.DoesNotContain("brine-cold-and-short", cautions);
        Assert.Contains("cured-soak-cold", cautions);
    }

    [Fact]
    public void An_injected_leg_is_told_a_temperature() => Assert.Contains(
        Brine.Answer(Pickle)["cautions"]!.AsArray(), c => (string)c!["id"]! == "temperature-not-intact");

    [Fact]
    public void Without_a_cut_a_cure_has_no_level_to_be_held_against() => Assert.Contains(
        "/cut required",
        Brine.Faults(
            """
            {"kind":"soak","meat":{"value":5,"unit":"kg"},"meatWater":{"value":70,"unit":"%"},"dose":{"value":100,"unit":"%"},
             "lines":[{"ingredient":"water"},{"ingredient":"cure-6-25","amount":{"value":1,"unit":"%-of-liquid"} }] }
            """, ""));
}
