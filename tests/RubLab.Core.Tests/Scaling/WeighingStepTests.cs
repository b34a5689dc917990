using CsCheck;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Scaling;

public sealed class WeighingStepTests
{
    [Fact]
    public void A_gram_is_the_step_when_nothing_is_said() => Assert.Equal(Given.Step(1, "g"), WeighingStep.Default);

    [Theory]
    [InlineData(0.1, "g", 3, 0.3)]
    [InlineData(0.1, "g", 12345678, 1234567.8)]
    [InlineData(0.01, "oz", 7, 0.07)]
    [InlineData(0.05, "lb", 3, 0.15)]
    [InlineData(5, "g", 0, 0)]
    public void Steps_come_out_free_of_binary_noise(double step, string unit, long steps, double value) =>
        Assert.Equal(value, Given.Step(step, unit).ValueOf(steps));

    [Theory]
    [InlineData(0.1, "g", 0.1)]
    [InlineData(0.01, "oz", 0.28349523125)]
    [InlineData(1, "lb", 453.59237)]
    public void A_step_weighs_what_its_unit_says(double step, string unit, double grams)
    {
        Assert.Equal(grams, Given.Step(step, unit).Grams, 1e-12);
        Assert.Equal(grams * 20, Given.Step(step, unit).GramsOf(20), 1e-10);
    }

    [Fact]
    public void Values_of_steps_add_up_to_the_value_of_their_sum() =>
        Law.Holds(Gen.Select(Gen.Int[0, 4].Select(i => new[] { 0.1, 0.01, 0.05, 0.5, 2 }[i]), Gen.Int[0, 100_000].Array[1, 50]), 5_000, c =>
        {
            var step = Given.Step(c.Item1, "g");

            Assert.Equal((decimal)step.ValueOf(c.Item2.Sum(s => (long)s)), c.Item2.Sum(s => (decimal)step.ValueOf(s)));
        });
}
