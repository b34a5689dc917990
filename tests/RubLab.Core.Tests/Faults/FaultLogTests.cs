using RubLab.Core.Faults;

namespace RubLab.Core.Tests.Faults;

public sealed class FaultLogTests
{
    [Fact]
    public void Faults_beyond_the_hundred_listed_are_counted()
    {
        var log = new FaultLog();
        for (var i = 0; i < 250; i++)
        {
            log.Root.At(i).Fault("bad", "Bad.");
        }

        Assert.Equal(250, log.Count);
        Assert.Equal(100, log.Faults.Count);
        Assert.Equal("/0", log.Faults[0].Pointer);
        Assert.Equal("/99", log.Faults[99].Pointer);
        Assert.False(log.IsClean);
    }

    [Fact]
    public void A_fault_keeps_its_code_its_words_and_its_parameters()
    {
        var log = new FaultLog();

        log.Root.At("dose").Fault("too-much", "Too much.", ("value", 3d), ("allowed", new[] { "g", "kg" }));

        var fault = Assert.Single(log.Faults);
        Assert.Equal(("/dose", "too-much", "Too much."), (fault.Pointer, fault.Code, fault.Detail));
        Assert.Equal(2, fault.Parameters.Count);
        Assert.Equal(3d, fault.Parameters["value"]);
        Assert.Equal(["g", "kg"], Assert.IsType<string[]>(fault.Parameters["allowed"]));
    }

    [Fact]
    public void A_fault_without_parameters_has_none()
    {
        var log = new FaultLog();

        log.Root.Fault("bad", "Bad.");

        Assert.Empty(log.Faults[0].Parameters);
    }

    [Fact]
    public void A_clean_log_gives_the_value()
    {
        var result = new FaultLog().ResultOf("value");

        Assert.True(result.IsGood);
        Assert.Equal("value", result.Value);
        Assert.True(result.Log.IsClean);
    }

    [Fact]
    public void A_log_with_a_fault_withholds_the_value()
    {
        var log = new FaultLog();
        log.Root.Fault("bad", "Bad.");

        var result = log.ResultOf("value");

        Assert.False(result.IsGood);
        Assert.Null(result.Value);
        Assert.Same(log, result.Log);
    }

    [Fact]
    public void No_value_and_no_fault_is_a_mistake_of_the_caller() =>
        Assert.Throws<ArgumentException>(() => new FaultLog().ResultOf<string>(null));
}
