using CsCheck;
using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Scaling;

public sealed class SpoonMeasureTests
{
    private const double Teaspoon = 4.92892159375;

    [Theory]
    [InlineData(1, "1/8 tsp")]
    [InlineData(2, "1/4 tsp")]
    [InlineData(3, "3/8 tsp")]
    [InlineData(4, "1/2 tsp")]
    [InlineData(5, "5/8 tsp")]
    [InlineData(6, "3/4 tsp")]
    [InlineData(7, "7/8 tsp")]
    [InlineData(8, "1 tsp")]
    [InlineData(23, "2 7/8 tsp")]
    [InlineData(24, "1 tbsp")]
    [InlineData(33, "1 tbsp + 1 1/8 tsp")]
    [InlineData(95, "3 tbsp + 2 7/8 tsp")]
    [InlineData(96, "1/4 cup")]
    [InlineData(153, "1/4 cup + 2 tbsp + 1 1/8 tsp")]
    [InlineData(192, "1/2 cup")]
    [InlineData(288, "3/4 cup")]
    [InlineData(384, "1 cup")]
    [InlineData(385, "1 cup + 1/8 tsp")]
    [InlineData(1248, "3 1/4 cup")]
    public void Eighths_of_a_teaspoon_read_as_a_cook_would_say_them(int eighths, string text) =>
        Assert.Equal(text, SpoonMeasure.Of(eighths * Teaspoon / 8, Density(1))!.Text);

    [Fact]
    public void A_form_without_a_density_has_no_spoons() => Assert.Null(SpoonMeasure.Of(10, null));

    [Fact]
    public void Less_than_a_sixteenth_of_a_teaspoon_is_no_spoon()
    {
        Assert.Null(SpoonMeasure.Of(0, Density(1)));
        Assert.Null(SpoonMeasure.Of(Teaspoon / 16 * 0.999, Density(1)));
        Assert.Equal("1/8 tsp", SpoonMeasure.Of(Teaspoon / 16 * 1.001, Density(1))!.Text);
    }

    [Fact]
    public void What_the_spoons_hold_is_a_band_of_the_density()
    {
        var spoons = SpoonMeasure.Of(6.2, new BulkDensity(new Band(1.1, 1.2, 1.5), Given.NoSource, "estimate"))!;

        Assert.Equal("1 tsp", spoons.Text);
        Assert.Equal(1.1 * Teaspoon, spoons.Grams.Low, 1e-12);
        Assert.Equal(1.2 * Teaspoon, spoons.Grams.Typical, 1e-12);
        Assert.Equal(1.5 * Teaspoon, spoons.Grams.High, 1e-12);
        Assert.Equal((1.2 * Teaspoon) - 6.2, spoons.RoundingErrorGrams, 1e-12);
    }

    [Fact]
    public void Reading_the_spoons_back_gives_the_mass_within_the_stated_error() =>
        Law.Holds(Gen.Select(Gen.OneOf(Gen.Double[0.05, 50], Gen.Double[50, 20_000]), Gen.Double[0.2, 1.5]), 20_000, c =>
        {
            var (grams, density) = c;
            var sixteenth = Teaspoon / 16 * density;
            if (SpoonMeasure.Of(grams, Density(density)) is not { } spoons)
            {
                Assert.True(grams < sixteenth * (1 + 1e-12));
                return;
            }

            var read = SpoonText.Teaspoons(spoons.Text) * Teaspoon * density;

            Assert.Equal(grams + spoons.RoundingErrorGrams, read, grams * 1e-12);
            Assert.Equal(spoons.Grams.Typical, read, grams * 1e-12);
            Assert.InRange(Math.Abs(spoons.RoundingErrorGrams), 0, sixteenth + (grams * 1e-12));
        });

    [Fact]
    public void No_measure_is_given_more_often_than_the_next_larger_one_takes() =>
        Law.Holds(Gen.Double[0.5, 5000], 5_000, grams =>
        {
            foreach (var part in SpoonMeasure.Of(grams, Density(1))!.Text.Split(" + "))
            {
                var teaspoons = SpoonText.Teaspoons(part);
                Assert.True(part.EndsWith("cup", StringComparison.Ordinal)
                    || (part.EndsWith("tbsp", StringComparison.Ordinal) && teaspoons < 12)
                    || (part.EndsWith("tsp", StringComparison.Ordinal) && teaspoons < 3));
            }
        });

    private static BulkDensity Density(double gramsPerMillilitre) =>
        new(Band.Exact(gramsPerMillilitre), Given.NoSource, "filling");
}
