using System.Text.Json;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Json;

namespace RubLab.Contracts.Tests.Formulas;

/// <summary>One line of a liquid in percent changed: the rest follows.</summary>
public class LiquidChangeTests
{
    private const string Change =
        """
        {"formula":{"name":"Pump","kind":"injection","dose":{"value":100,"unit":"g/kg"},"lines":[{"ingredient":"water"},
          {"ingredient":"sodium-chloride","amount":{"value":8,"unit":"%-of-liquid"}},
          {"ingredient":"sugar-granulated","amount":{"value":2,"unit":"%-of-liquid"}}]},"line":1,"amount":10,"hold":"dose"}
        """;

    [Fact]
    public void More_salt_at_a_held_dose_is_less_water()
    {
        var answer = Answer("");
        Assert.Null(answer.Formula.Lines[0].Amount);
        Assert.Equal([10, 2], answer.Formula.Lines.Skip(1).Select(l => l.Amount!.Value.Value));
        Assert.Equal(8, answer.Before.SaltRatio.Typical);
        Assert.Equal(10, answer.After.SaltRatio.Typical);
        Assert.Equal(100, answer.After.TotalRatio.Value);
    }

    [Fact]
    public void A_stronger_liquid_at_held_salt_is_less_liquid()
    {
        var answer = Answer("""/hold = "salt" """);
        Assert.Equal(80, answer.After.TotalRatio.Value, 1e-9);
        Assert.Equal(8, answer.After.SaltRatio.Typical);
    }

    [Theory]
    [InlineData("/line = 0", "/amount rest-has-no-amount")]
    [InlineData("/amount = 98", "/amount no-rest")]
    [InlineData("/amount = 100.5", "/amount out-of-range")]
    public void A_change_that_leaves_no_rest_is_refused(string edits, string expected) => Assert.Equal(
        [expected],
        Document.Faults(FormulaChanges.Compute(Request(edits), Seed.Catalogue, (_, _) => null).Log));

    private static FormulaChangeRequest Request(string edits) =>
        JsonSerializer.Deserialize(Document.Of(Change).Edit(edits).Json, RubLabJson.Default.FormulaChangeRequest)!;

    private static FormulaChangeResponse Answer(string edits)
    {
        var result = FormulaChanges.Compute(Request(edits), Seed.Catalogue, (_, _) => null);
        Assert.True(result.IsGood, string.Join(", ", Document.Faults(result.Log)));
        return result.Value;
    }
}
