using RubLab.Contracts.Remarks;
using RubLab.Core.Formulas;

namespace RubLab.Contracts.Tests.Remarks;

/// <summary>A caution is shown where it applies and nowhere else: what is always shown is soon not read.</summary>
public sealed class CautionTests
{
    private const string Short = "brine-cold-and-short";
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
