using RubLab.Contracts.Remarks;
using RubLab.Core.Formulas;

namespace RubLab.Contracts.Tests.Remarks;

/// <summary>A caution is shown where it applies and nowhere else: what is always shown is soon not read.</summary>
public sealed class CautionTests
{
    private const string Short = "brine-cold-and-short";
    private const string Cured = "cured-soak-cold";
    private const string Acidity = "sauce-acidity";
    private const string Once = "liquid-once";
    private const string Needles = "injected-clean";

    [Theory]
    [InlineData(FormulaKind.Soak, new[] { Short, Once })]
    [InlineData(FormulaKind.Injection, new[] { Once, Needles })]
    [InlineData(FormulaKind.Sauce, new[] { Acidity, Once })]
    [InlineData(FormulaKind.Mop, new[] { Acidity, Once })]
    [InlineData(FormulaKind.Rub, new string[0])]
    public void A_kind_of_formula_brings_its_own_cautions(FormulaKind kind, string[] expected)
    {
        var ids = IdsOf(new CautionSubject([kind], [], []));
        Assert.Equal(expected.Order(StringComparer.Ordinal), ids.Intersect([Short, Acidity, Once, Needles]).Order(StringComparer.Ordinal));
        Assert.Contains("cold-holding", ids);
    }

    [Theory]
    [InlineData("poultry", "salt", new[] { Short })]
    [InlineData("poultry", "cure-6-25", new[] { Cured })]
    [InlineData("red-meat", "salt", new string[0])]
    [InlineData("red-meat", "cure-6-25", new[] { Cured })]
    [InlineData("fish", "salt", new string[0])]
    public void Two_days_are_told_of_birds_in_a_seasoning_brine_and_of_no_other_soak(string meat, string ingredient, string[] expected) => Assert.Equal(
        expected, IdsOf(Of(ingredient) with { Kinds = [FormulaKind.Soak], Meats = [(meat, false)] }).Intersect([Short, Cured]));

    [Theory]
    [InlineData("red-meat", true, "temperature-not-intact")]
    [InlineData("red-meat", false, "temperature-red-meat")]
    [InlineData("poultry", true, "temperature-poultry")]
    [InlineData("ground", true, "temperature-ground")]
    [InlineData("fish", true, "temperature-fish")]
    public void Meat_has_one_temperature_to_go_by(string meat, bool isPierced, string expected) => Assert.Equal(
        [expected], IdsOf(On((meat, isPierced))).Where(id => id.StartsWith("temperature-", StringComparison.Ordinal)));

    [Fact]
    public void Injected_meat_is_told_the_published_figures_and_that_the_lower_is_not_enough()
    {
        var caution = On(("red-meat", true)).Cautions(Seed.Catalogue).Single(c => c.Id == "temperature-not-intact");

        Assert.Matches("145 F .* not enough by itself; .* 160 F", caution.Text);
        Assert.Equal("usda-fsis-temperatures", caution.SourceId);
        Assert.Contains("label", caution.DefersTo, StringComparison.Ordinal);
    }

    [Fact]
    public void The_figure_for_whole_roasts_stands_only_where_some_meat_is_whole_inside()
    {
        Assert.Contains("temperature-red-meat", IdsOf(On(("red-meat", false))));
        Assert.DoesNotContain("temperature-red-meat", IdsOf(On(("red-meat", true))));
        Assert.Contains("temperature-red-meat", IdsOf(On(("red-meat", true), ("red-meat", false))));
        Assert.Contains("injected-not-intact", IdsOf(On(("red-meat", true), ("red-meat", false))));
        Assert.DoesNotContain("injected-not-intact", IdsOf(On(("red-meat", false))));
        Assert.Contains("temperature-poultry", IdsOf(On(("poultry", true))));
    }

    [Fact]
    public void What_is_in_it_brings_cautions_by_its_nature_and_by_its_name()
    {
        Assert.Contains("cure-is-not-salt", IdsOf(Of("cure-6-25")));
        Assert.DoesNotContain("cure-is-not-salt", IdsOf(Of("salt")));
        Assert.Contains("celery-in-plant-cure", IdsOf(Of("plant-nitrite-powder")));
        Assert.DoesNotContain("celery-in-plant-cure", IdsOf(Of("cure-6-25")));
        Assert.Contains("allergens-read-your-label", IdsOf(Of("worcestershire")));
        Assert.DoesNotContain("allergens-read-your-label", IdsOf(Of("salt")));
    }

    [Fact]
    public void The_name_of_meat_with_added_solution_is_spoken_of_where_a_solution_was_added_and_nowhere_else()
    {
        const string Name = "added-solution-name";
        Assert.Contains(Name, IdsOf(On(("poultry", true)) with { HasSolution = true }));
        Assert.Contains(Name, IdsOf(new CautionSubject([FormulaKind.Soak], [], [("poultry", false)])));
        Assert.DoesNotContain(Name, IdsOf(On(("poultry", false))));
        Assert.DoesNotContain(Name, IdsOf(Of("worcestershire")));
        Assert.Contains("injected-name", IdsOf(new CautionSubject([FormulaKind.Injection], [], [("poultry", true)])));
    }

    private static CautionSubject On(params (string Class, bool IsPierced)[] meats) => new([FormulaKind.Rub], [], meats);

    private static CautionSubject Of(string ingredient)
    {
        Assert.True(Seed.Catalogue.TryFindIngredient(ingredient, out var found));
        return new CautionSubject([FormulaKind.Rub], [found!], []);
    }

    private static List<string> IdsOf(CautionSubject subject) => subject.Cautions(Seed.Catalogue).Select(c => c.Id).ToList();
}
