using System.Text.Json.Nodes;

namespace RubLab.Contracts.Tests.Scaling;

/// <summary>Adds an answer's amounts up in decimal, as a person with the printed sheet would.</summary>
public static class Sums
{
    /// <summary>Pieces sum to onMeat, lines to toMix, every amount is whole steps, and the running totals run.</summary>
    public static void AreExact(JsonNode treatment, decimal step, string unit)
    {
        var onMeat = Value(treatment["onMeat"]!, step, unit);
        var toMix = Value(treatment["toMix"]!, step, unit);
        if (treatment["pieces"] is JsonArray pieces)
        {
            Assert.Equal(onMeat, pieces.Sum(p => Value(p!["amount"]!, step, unit)));
        }

        decimal running = 0;
        foreach (var line in treatment["lines"]!.AsArray())
        {
            running += Value(line!["toMix"]!, step, unit);
            Assert.Equal(running, Value(line["runningTotal"]!, step, unit));
        }

        Assert.Equal(toMix, running);
    }

    private static decimal Value(JsonNode quantity, decimal step, string unit)
    {
        Assert.Equal(unit, (string)quantity["unit"]!);
        var value = decimal.Parse(
            quantity["value"]!.ToJsonString(), System.Globalization.NumberStyles.Float, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(0, value % step);
        Assert.True(value >= 0);
        return value;
    }
}
