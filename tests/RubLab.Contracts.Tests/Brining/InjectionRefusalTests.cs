namespace RubLab.Contracts.Tests.Brining;

public class InjectionRefusalTests
{
    // Pure salt, so that an answer can be worked by hand.
    private const string Water = """/lines = [{"ingredient":"water"},{"ingredient":"sodium-chloride"}]""";

    [Theory]
    [InlineData("/dose/value = 0", "/dose/value out-of-range")]
    [InlineData("/dose/value = 400", "/dose/value out-of-range")]
    [InlineData("""/dose/unit = "g" """, "/dose/unit unit-not-allowed")]
    [InlineData("- /dose", "/dose required")]
    [InlineData("- /kind & - /meat", "/kind required; /meat required")]
    [InlineData("""/kind = "rub" """, "/kind unknown-word")]
    [InlineData("""/cut = "unicorn" """, "/cut unknown-cut")]
    [InlineData("/pieces = 0", "/pieces out-of-range")]
    [InlineData("""/pieceWeights = [{"value":2,"unit":"kg"}]""", "/pieceWeights one-or-the-other")]
    [InlineData("- /meat & /pieces = 2 & /pieceWeights = []", "/pieceWeights one-or-the-other; /pieceWeights required")]
    [InlineData("""- /meat & /pieceWeights = [{"value":2,"unit":"kg"},null,{"value":0,"unit":"kg"},{"value":2,"unit":"L"}]""", "/pieceWeights/1 required; /pieceWeights/2/value out-of-range; /pieceWeights/3/unit unit-not-allowed")]
    [InlineData("""- /meat & /pieceWeights = [{"value":600,"unit":"kg"},{"value":600,"unit":"kg"}]""", "/pieceWeights out-of-range")]
    [InlineData("/retained/low = 95", "/retained band-order")]
    [InlineData("/retained/high = 101", "/retained/high out-of-range")]
    [InlineData("/temperature/value = 41", "/temperature/value out-of-range")]
    [InlineData("/temperature/value = -1", "/temperature/value out-of-range")]
    [InlineData("""/time = {"value":1,"unit":"d"} & /liquid = {"value":1,"unit":"L"} & /saltInMeat = {"value":1,"unit":"g/kg"}""", "/liquid not-for-kind; /saltInMeat not-for-kind; /time not-for-kind")]
    [InlineData("/lines = []", "/lines required")]
    [InlineData("- /lines/1/amount", "/lines/1/amount required")]
    [InlineData("/lines/1/amount/value = 720", "")]
    [InlineData("/lines/1/amount/value = 740", "/lines above-saturation")]
    [InlineData("""/lines/1/amount = {"value":7,"unit":"%-of-liquid"}""", "/lines/1/amount/unit mixed-authoring")]
    [InlineData("""/loss = {"value":95,"unit":"%"}""", "/loss/value out-of-range")]
    [InlineData("""/loss = {"value":95,"unit":"cm"}""", "/loss/unit unit-not-allowed")]
    [InlineData("""/bowl = {"value":1,"unit":"g"}""", "/bowl capacity-too-small")]
    [InlineData("""/weighedBack = {"green":{"value":5,"unit":"kg"}}""", "/weighedBack required")]
    [InlineData("""/weighedBack = {"green":{"value":5,"unit":"kg"},"pumped":{"value":4,"unit":"kg"}}""", "/weighedBack/pumped out-of-range")]
    [InlineData("""/weighedBack = {"green":{"value":5,"unit":"kg"},"pumped":{"value":11,"unit":"kg"}}""", "/weighedBack/pumped out-of-range")]
    [InlineData("""/weighedBack = {"green":{"value":5,"unit":"kg"},"drained":{"value":4,"unit":"kg"}}""", "/weighedBack/drained out-of-range")]
    [InlineData("""/weighedBack = {"pumped":{"value":4,"unit":"kg"}}""", "/weighedBack/green required")]
    [InlineData("/targets = []", "/targets required")]
    [InlineData("/targets = [null]", "/targets/0 required")]
    [InlineData("/targets = [{}]", "/targets/0/ingredient required; /targets/0/reached required")]
    [InlineData("""/targets = [{"ingredient":"salt","reached":{"value":8,"unit":"g/kg"}}]""", "/targets/0/ingredient target-not-free")]
    [InlineData("""/targets = [{"ingredient":"paprika","reached":{"value":8,"unit":"g"}}]""", "/targets/0/reached/unit unit-not-allowed")]
    [InlineData("""/targets = [{"ingredient":"sodium-chloride","reached":{"value":6,"unit":"g/kg"}}]""", "/targets/0/reached already-above")]
    [InlineData("""/targets = [{"ingredient":"sugar-granulated","reached":{"value":1,"unit":"g/kg"}},{"ingredient":"sugar-granulated","reached":{"value":2,"unit":"g/kg"}}]""", "/targets/1/ingredient duplicate-id")]
    [InlineData("""/targets = [{"ingredient":"sugar-granulated","reached":{"value":95,"unit":"g/kg"}}]""", "/targets/0/reached no-rest")]
    public void An_injection_is_refused_where_it_is_wrong(string edits, string expected) => Assert.Equal(
        expected.Split("; ", StringSplitOptions.RemoveEmptyEntries), Brine.Faults(Brine.Shoulder, edits));

    [Theory]
    [InlineData(23, "")]
    [InlineData(24, "/targets/0/reached above-saturation")]
    [InlineData(95, "/targets/0/reached above-saturation")]
    public void A_target_is_refused_where_the_salt_for_it_does_not_dissolve(double target, string expected)
    {
        // At 90 % retained of 10 % pump 23.7 g/kg takes 26.3 % of salt, which is what dissolves at 4 C.
        Assert.Equal(
            expected.Split("; ", StringSplitOptions.RemoveEmptyEntries),
            Brine.Faults(Brine.Shoulder, $$"""{{Water}} & /targets = [{"ingredient":"sodium-chloride","reached":{"value":{{target}},"unit":"g/kg"} }]"""));
    }

    [Fact]
    public void A_fault_of_saturation_names_it()
    {
        var fault = Brine.Compute(Brine.Shoulder, """/temperature = {"value":60,"unit":"F"} & /lines/1/amount/value = 800""").Log.Faults[0];

        // 26.395 % at 60 F.
        Assert.Equal(26.395, (double)fault.Parameters["saturated"], 0.0051);
        Assert.Contains("26.39 %", fault.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void Targets_that_hang_on_one_another_are_refused() => Assert.Equal(
        ["/targets/0/reached targets-undetermined"],
        Brine.Faults(
            Brine.Shoulder,
            """/lines = [{"ingredient":"sodium-chloride","amount":{"value":1,"unit":"kg"}}] & /targets = [{"ingredient":"sodium-chloride","reached":{"value":8,"unit":"g/kg"}}]"""));
}
