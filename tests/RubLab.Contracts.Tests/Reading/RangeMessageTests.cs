namespace RubLab.Contracts.Tests.Reading;

/// <summary>A cook reads the range in the unit they wrote; a program reads it in the base unit.</summary>
public sealed class RangeMessageTests
{
    [Theory]
    [InlineData("""/treatments/0/formula/dose = {"value":0,"unit":"%"}""", "0 % is out of range: from 0.0000001 up to 100 %.")]
    [InlineData("""/treatments/0/formula/dose = {"value":1001,"unit":"g/kg"}""", "1001 g/kg is out of range: from 0.000001 up to 1000 g/kg.")]
    [InlineData("""/pile/0/weightEach = {"value":3000,"unit":"lb"}""", "3000 lb is out of range: from 0.00000220462 up to 2204.62 lb.")]
    [InlineData("""/pile/0/weightEach = {"value":-2,"unit":"kg"}""", "-2 kg is out of range: from 0.000001 up to 1000 kg.")]
    public void The_range_is_said_in_the_unit_that_was_written(string edit, string message)
    {
        var fault = Assert.Single(Document.FirstSheet().Edit(edit).Sheet().Log.Faults);
        Assert.Equal(message, fault.Detail);
    }

    [Fact]
    public void The_parameters_stay_in_the_base_unit()
    {
        var fault = Assert.Single(Document.FirstSheet().Edit("""/pile/0/weightEach = {"value":3000,"unit":"lb"}""").Sheet().Log.Faults);
        Assert.Equal(
            [("value", 3000d), ("lowest", 0.001), ("highest", 1e6), ("unit", "g")],
            fault.Parameters.Select(p => (p.Key, p.Value)));
    }

    [Fact]
    public void A_number_without_a_unit_leaves_no_gap()
    {
        var fault = Assert.Single(Document.FirstSheet().Edit("""- /pile/0/count & - /pile/0/weightEach & /pile/0/pieces = [{"weight":{"value":3,"unit":"kg"},"doseFactor":11}]""").Sheet().Log.Faults);
        Assert.Equal("11 is out of range: from 0 up to 10.", fault.Detail);
    }
}
