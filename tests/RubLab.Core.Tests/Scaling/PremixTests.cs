using CsCheck;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Scaling;

public sealed class PremixTests
{
    private static readonly ScaleSet[] Kitchens =
    [
        ScaleSet.Of(Given.Step(1, "g")), ScaleSet.Of(Given.Step(0.1, "g")), ScaleSet.Of(Given.Step(0.005, "lb")),
        new([new(200, Given.Step(0.1, "g")), new(3000, Given.Step(1, "g")), new(30_000, Given.Step(5, "g"))]),
    ];

    // A small line of a hundredth of a step to twenty steps, and a carrier of at least as much.
    private static readonly Gen<(ScaleSet Scales, double Grams, double CarrierGrams)> Cases = Gen.Select(
        Gen.Int[0, Kitchens.Length - 1], Gen.Double[0.01, 19.9], Gen.OneOf(Gen.Double[1, 3], Gen.Double[3, 200]),
        (kitchen, steps, more) => (Kitchens[kitchen], Kitchens[kitchen].Finest.Step.Grams * steps, Kitchens[kitchen].Finest.Step.Grams * steps * more));

    [Fact]
    public void All_three_amounts_are_whole_steps_of_the_scales_that_hold_them_and_the_small_part_is_not_coarse() => Law.Holds(Cases, 10_000, c =>
    {
        if (Premix.Of(new(c.Grams, c.CarrierGrams, c.Scales.For(c.Grams).Step, c.Scales, 5)) is not { } premix)
        {
            Assert.InRange((c.Grams + c.CarrierGrams) / c.Scales.For(c.Grams + c.CarrierGrams).Step.Grams, 0, 0.5);
            return;
        }

        Assert.All([premix.Ingredient, premix.Carrier, premix.Taken], amount => Assert.True(amount.Steps > 0));
        Assert.InRange(premix.Ingredient.Steps, 20, long.MaxValue);
        Assert.Equal(c.Scales.For(c.Grams + c.CarrierGrams).Step, premix.Taken.Step);
    });

    [Fact]
    public void The_errors_told_are_those_of_weighing_it_and_the_small_line_is_nearly_right() => Law.Holds(Cases, 10_000, c =>
    {
        if (Premix.Of(new(c.Grams, c.CarrierGrams, c.Scales.For(c.Grams).Step, c.Scales, 5)) is not { } premix)
        {
            return;
        }

        var share = premix.Ingredient.Grams / (premix.Ingredient.Grams + premix.Carrier.Grams);
        var held = premix.Taken.Grams * share;
        Assert.Equal(held - c.Grams, premix.ErrorPercent / 100 * c.Grams, 1e-9);
        Assert.Equal(premix.Taken.Grams - held - c.CarrierGrams, premix.CarrierErrorPercent / 100 * c.CarrierGrams, 1e-9);

        // Half a step of the carrier is all that parts the premix's share from the one asked for.
        var whole = premix.Ingredient.Grams + premix.Carrier.Grams;
        Assert.InRange(Math.Abs(premix.ErrorPercent), 0, premix.Carrier.Step.Grams / 2 / whole * 100 * 1.000001 + 1e-9);

        // The two together are what was due, within half a step of what is taken.
        Assert.InRange(Math.Abs(premix.Taken.Grams - c.Grams - c.CarrierGrams), 0, premix.Taken.Step.Grams / 2 * 1.000001);
    });

    // 0.3 g with 9 g: 9 g taken of 20 g in 580 hold 0.3 g and 8.7 g.
    [Fact]
    public void A_third_of_a_gram_beside_nine_is_taken_right()
    {
        var premix = Premix.Of(new(0.3, 9, Given.Step(1, "g"), Kitchens[0], 5))!;

        Assert.Equal((20L, 580L, 9L), (premix.Ingredient.Steps, premix.Carrier.Steps, premix.Taken.Steps));
        Assert.Equal(0, premix.ErrorPercent, 1e-9);
        Assert.Equal(-100.0 / 30, premix.CarrierErrorPercent, 1e-9);
    }

    [Fact]
    public void A_large_part_goes_on_the_scale_that_takes_it()
    {
        var premix = Premix.Of(new(0.12, 4, Given.Step(0.1, "g"), Kitchens[3], 5))!;

        // 4.1 g taken, 2 g of it with 2 x (4.1 / 0.12 - 1) = 66.3 g; thirty times as little goes on the next scale.
        Assert.Equal((2m, 66.3m, 4.1m), (premix.Ingredient.Value, premix.Carrier.Value, premix.Taken.Value));
        var more = Premix.Of(new(0.03, 4, Given.Step(0.1, "g"), Kitchens[3], 5))!;
        Assert.Equal((2m, 265m, 1m), (more.Ingredient.Value, more.Carrier.Value, (decimal)more.Carrier.Step.Value));
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(2, 1)]
    [InlineData(double.NaN, 1)]
    public void A_small_part_is_above_nothing_and_no_more_than_its_carrier(double grams, double carrier) => Assert.ThrowsAny<ArgumentOutOfRangeException>(
        () => Premix.Of(new(grams, carrier, Given.Step(1, "g"), Kitchens[0], 5)));
}
