using System.Text.Json.Nodes;

namespace RubLab.Contracts.Tests.Scaling;

/// <summary>An injection in a stack: what goes in, what the scale shows, what stays, what it does to salt and cautions.</summary>
public sealed class InjectionTests
{
    // 10 % of a liquid of 8 % sodium chloride, half of which stays: 4 g/kg.
    private const string Pumped =
        """
        {"pile":[{"id":"shoulders","cut":"pork-shoulder","pieces":[{"weight":{"value":3000,"unit":"g"} },{"weight":{"value":5000,"unit":"g"} }],"bone":{"value":0,"unit":"%"},
                  "cookYield":{"value":60,"unit":"%"},"keptInCooking":{"value":80,"unit":"%"},"portion":{"value":150,"unit":"g"} }],
         "treatments":[{"formula":{"name":"Lock water","kind":"injection","dose":{"value":10,"unit":"%"},
             "lines":[{"ingredient":"water"},{"ingredient":"sodium-chloride","amount":{"value":8,"unit":"%-of-liquid"} }] },"retained":{"value":50,"unit":"%"} }] }
        """;

    [Fact]
    public void Every_piece_is_pumped_to_its_target_weight()
    {
        var sheet = Answer("");
        var injection = sheet["treatments"]![0]!;

        Assert.Equal([300, 500], injection["pieces"]!.AsArray().Select(p => Value(p!, "amount")));
        Assert.Equal([3300, 5500], injection["pieces"]!.AsArray().Select(p => Value(p!, "targetWeight")));
        Assert.Equal([736, 64], injection["lines"]!.AsArray().Select(l => Value(l!, "toMix")));
        // 9 CFR 317.2(e)(2): solution put in over the raw weight.
        Assert.Equal("""{"value":10,"unit":"%"}""", injection["addedSolution"]!.ToJsonString());
        Assert.Null(injection["coverage"]);
    }

    [Fact]
    public void Nothing_that_stays_is_no_treatment()
    {
        const string Nothing = """/treatments/0/retained = {"value":0,"unit":"%"}""";
        string[] expected = ["/treatments/0/retained nothing-retained"];

        Assert.Equal(expected, Document.Of(Pumped).Edit(Nothing).SheetFaults());
        Assert.Equal(expected, Document.Of(Pumped).Edit(Nothing.Replace("\"value\":0", "\"low\":0,\"typical\":0,\"high\":10", StringComparison.Ordinal)).SheetFaults());
        Assert.Equal(expected, Document.Faults(Document.Of(Pumped).Edit(Nothing).SaltCheck().Log));
        Assert.Empty(Document.Of(Pumped).Edit(Nothing.Replace("\"value\":0", "\"low\":0,\"typical\":5,\"high\":10", StringComparison.Ordinal)).SheetFaults());
    }

    [Fact]
    public void Only_what_stays_salts_the_meat()
    {
        var ledger = Answer("")["salt"]![0]!["ledger"]!;
        Assert.Equal(4, Typical(ledger, "saltPerKgGreen"), 1e-9);
        Assert.Equal(4, Typical(ledger, "saltDiscardedPerKgGreen"), 1e-9);
        // 4 g in 1050 g of injected and drained meat.
        Assert.Equal(3.81, Typical(ledger, "saltPerKgInjected"), 1e-9);
        Assert.Equal(4 * 0.8 / 0.6, Typical(ledger, "saltPerKgCooked"), 0.005);
    }

    [Fact]
    public void Injected_meat_is_no_longer_whole_inside()
    {
        var cautions = Answer("")["cautions"]!.AsArray().Select(c => (string)c!["id"]!).ToList();
        Assert.Contains("injected-not-intact", cautions);
        Assert.DoesNotContain("temperature-red-meat", cautions);
    }

    [Theory]
    // At once: 150 g went into 3000 g instead of 300 g, half of it stays; the other piece counts as planned.
    [InlineData("undrained", 3150, 8 * 0.5 * (150 + 500) / 800.0)]
    // Drained: 250 g of 300 g stay, all of them; the other piece keeps half of 500 g.
    [InlineData("drained", 3250, 8 * (250 + 250) / 800.0)]
    public void A_piece_weighed_back_replaces_the_estimate(string state, double after, double salt)
    {
        var sheet = Answer($$$"""/pile/0/pieces/0/weighedBack = {"value":{{{after}}},"unit":"g"} & /pile/0/weighedBackIs = "{{{state}}}" """);

        Assert.Equal(salt, Typical(sheet["salt"]![0]!["ledger"]!, "saltPerKgGreen"), 0.0051);
        var pieces = sheet["treatments"]![0]!["pieces"]!.AsArray();
        Assert.Equal(after, Value(pieces[0]!, "weighedBack"));
        Assert.Null(pieces[1]!["weighedBack"]);
    }

    [Fact]
    public void More_than_was_planned_counts_with_more() => Assert.Equal(
        8 * (0.5 * 500 + 600) / 800.0,
        Typical(
            Answer("""/pile/0/pieces/0/weighedBack = {"value":3600,"unit":"g"} & /pile/0/weighedBackIs = "drained" """)["salt"]![0]!["ledger"]!,
            "saltPerKgGreen"),
        0.0051);

    [Theory]
    [InlineData("""/pile/0/pieces/0/weighedBack = {"value":3.2,"unit":"kg"}""", "/pile/0/weighedBackIs needs-other")]
    [InlineData("""/pile/0/weighedBackIs = "drained" """, "/pile/0/weighedBackIs needs-other")]
    [InlineData("""/pile/0/pieces/1/weighedBack = {"value":4.9,"unit":"kg"} & /pile/0/weighedBackIs = "drained" """, "/pile/0/pieces/1/weighedBack/value weighed-back-unlikely")]
    [InlineData("""/pile/0/pieces/1/weighedBack = {"value":10.1,"unit":"kg"} & /pile/0/weighedBackIs = "drained" """, "/pile/0/pieces/1/weighedBack/value weighed-back-unlikely")]
    [InlineData("""/pile/0/pieces/1/weighedBack = {"value":5.3,"unit":"kg"} & /pile/0/weighedBackIs = "dry" """, "/pile/0/weighedBackIs unknown-word")]
    [InlineData("""/pile/0/pieces/1/weighedBack = {"value":5.3,"unit":"kg"} & /pile/0/weighedBackIs = "drained" & /treatments/0/formula = {"name":"Rub","kind":"rub","lines":[{"ingredient":"salt","form":"table","amount":{"value":1,"unit":"%"} }] }""", "/pile/0/weighedBackIs weighed-back-not-injected")]
    [InlineData("""/treatments/0/formula/dose/value = 0""", "/treatments/0/formula/dose/value out-of-range")]
    [InlineData("""/treatments/0/formula/dose/value = 400""", "/treatments/0/formula/dose/value out-of-range")]
    [InlineData("""/treatments/0/formula/lines/1/amount/value = 100""", "/treatments/0/formula/lines no-rest")]
    public void An_injection_is_refused_where_it_is_wrong(string edits, string expected) =>
        Assert.Equal([expected], Document.Of(Pumped).Edit(edits).SheetFaults());

    // Rounded it would be the green weight itself, which is allowed.
    [Fact]
    public void A_weight_just_under_its_bound_is_not_said_to_be_the_bound()
    {
        var log = Document.Of(Pumped).Edit("""/pile/0/pieces/1/weighedBack = {"value":4999.96,"unit":"g"} & /pile/0/weighedBackIs = "drained" """).Sheet().Log;

        Assert.StartsWith("A piece of 5000 g green weighs", Assert.Single(log.Faults).Detail, StringComparison.Ordinal);
        Assert.EndsWith("not 4999.96 g.", log.Faults[0].Detail, StringComparison.Ordinal);
    }

    private static JsonNode Answer(string edits) => Document.Of(Pumped).Edit(edits).SheetAnswer();

    private static double Value(JsonNode node, string member) => (double)node[member]!["value"]!;

    private static double Typical(JsonNode node, string member) => (double)node[member]!["typical"]!;
}
