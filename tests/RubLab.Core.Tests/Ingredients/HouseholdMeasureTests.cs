using System.Globalization;
using RubLab.Core.Ingredients;

namespace RubLab.Core.Tests.Ingredients;

/// <summary>One household weight of USDA SR28 predicts the food's others, within what their printed digits leave open.</summary>
public sealed class HouseholdMeasureTests
{
    private static readonly List<Dictionary<string, string>> Exceptions =
        PlainCsv.Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Published", "measure-exceptions.csv")));

    private static readonly List<(string Key, HouseholdMeasure First, HouseholdMeasure Second)> Pairs =
        [.. from ingredient in Seed.Catalogue.Ingredients
            from first in ingredient.Measures
            from second in ingredient.Measures
            where first.FormId == second.FormId && first.Sequence < second.Sequence
            select (KeyOf(ingredient.Id, first.FormId, first.Sequence, second.Sequence), first, second)];

    [Fact]
    public void There_are_171_pairs_to_compare() => Assert.Equal(171, Pairs.Count);

    [Fact]
    public void A_measure_predicts_the_others_of_its_form_but_for_the_named_exceptions()
    {
        var failing = Pairs.Where(p => !CanBeOneDensity(p.First, p.Second)).Select(p => p.Key);

        Assert.Equal(Exceptions.Select(KeyOf).Order(StringComparer.Ordinal), failing.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Each_exception_states_its_spread_and_a_reason() => Assert.All(Exceptions, exception =>
    {
        var (_, first, second) = Pairs.Single(p => p.Key == KeyOf(exception));
        var spread = 100 * ((Math.Max(first.GramsPerMillilitre, second.GramsPerMillilitre)
            / Math.Min(first.GramsPerMillilitre, second.GramsPerMillilitre)) - 1);

        Assert.Equal(double.Parse(exception["spread_percent"], CultureInfo.InvariantCulture), spread, 0.005);
        Assert.NotEmpty(exception["why"]);
    });

    [Fact]
    public void Every_measure_lies_inside_the_band_of_its_form() => Assert.All(
        Seed.Catalogue.Ingredients.SelectMany(i => i.Measures.Select(m => (Ingredient: i, Measure: m))),
        pair =>
        {
            var form = pair.Ingredient.Forms.Single(f => f.Id == pair.Measure.FormId);
            var band = form.Density!.GramsPerMillilitre;

            Assert.True(
                band.Contains(pair.Measure.GramsPerMillilitre),
                $"{pair.Ingredient.Id} {form.Id}: {pair.Measure.GramsPerMillilitre:R} outside {band.Low:R} to {band.High:R}.");
        });

    [Fact]
    public void A_measure_s_density_is_its_printed_weight_over_its_defined_volume()
    {
        var tablespoon = Given.Ingredient("salt").Measures.Single(m => m.Unit.Symbol == "tbsp");

        Assert.Equal(14.78676478125, tablespoon.VolumeMillilitres, 1e-12);
        Assert.Equal(18 / 14.78676478125, tablespoon.GramsPerMillilitre, 1e-15);
    }

    // Both printed weights stand for an interval; one density must be able to lie in both.
    private static bool CanBeOneDensity(HouseholdMeasure a, HouseholdMeasure b)
    {
        const double LastBits = 1e-12;
        return Least(a) <= Most(b) + LastBits && Least(b) <= Most(a) + LastBits;

        static double Least(HouseholdMeasure m) => (m.WeightGrams - m.RoundingGrams) / m.VolumeMillilitres;
        static double Most(HouseholdMeasure m) => (m.WeightGrams + m.RoundingGrams) / m.VolumeMillilitres;
    }

    private static string KeyOf(Dictionary<string, string> row) => KeyOf(
        row["ingredient_id"], row["form_id"],
        int.Parse(row["first_sequence"], CultureInfo.InvariantCulture), int.Parse(row["second_sequence"], CultureInfo.InvariantCulture));

    private static string KeyOf(string ingredient, string form, int first, int second) => $"{ingredient} {form} {first} {second}";
}
