using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;
using RubLab.Core.Sources;

namespace RubLab.Core.Tests.Ingredients;

public sealed class DensityChoiceTests
{
    private const double Limit = 15;

    [Fact]
    public void A_named_form_is_taken_as_named()
    {
        var salt = Given.Ingredient("salt");
        Assert.True(salt.TryFindForm("flake-dense", out var flake));

        var choice = DensityChoice.For(salt, flake, Limit);

        Assert.Equal(flake.Density, choice.Density);
        Assert.False(choice.SpansForms);
    }

    [Fact]
    public void An_unnamed_form_is_answered_by_all_where_they_differ()
    {
        var choice = DensityChoice.For(Given.Ingredient("salt"), null, Limit);

        Assert.True(choice.SpansForms);
        Assert.Equal("table", choice.Form.Id);
        Assert.Equal("form", choice.Density!.WidenedBy);
        Assert.Equal(0.25, choice.Density.GramsPerMillilitre.Low, 1e-12);
        Assert.Equal(18 / 14.78676478125, choice.Density.GramsPerMillilitre.Typical, 1e-12);
        Assert.Equal(1.345, choice.Density.GramsPerMillilitre.High, 1e-12);
        Assert.Equal(Confidence.VeryLow, choice.Density.Citation.Confidence);
    }

    [Theory]
    [InlineData(1.15, false)]
    [InlineData(1.1501, true)]
    [InlineData(0.87, false)]
    [InlineData(0.869, true)]
    public void Forms_are_asked_for_when_the_highest_is_over_the_lowest_by_more_than_the_limit(double other, bool spans)
    {
        var ingredient = Given.MadeUp("x", Band.Around(1, 5), default, 0) with
        {
            Forms = [Given.Form("a", Band.Around(1, 5), isDefault: true), Given.Form("b", Band.Around(other, 50), isDefault: false)],
        };

        var choice = DensityChoice.For(ingredient, null, Limit);

        Assert.Equal(spans, choice.SpansForms);
        Assert.Equal(spans ? other * 0.5 : 0.95, choice.Density!.GramsPerMillilitre.Low, 1e-12);
    }

    [Fact]
    public void A_default_form_without_a_density_has_none_to_choose()
    {
        var ingredient = Given.MadeUp("x", null, default, 0) with
        {
            Forms = [Given.Form("a", null, isDefault: true), Given.Form("b", Band.Exact(1), isDefault: false)],
        };

        Assert.Null(DensityChoice.For(ingredient, null, Limit).Density);
    }

    [Fact]
    public void A_form_without_a_density_does_not_count_among_the_forms()
    {
        var ingredient = Given.MadeUp("x", null, default, 0) with
        {
            Forms = [Given.Form("a", Band.Exact(1), isDefault: true), Given.Form("b", null, isDefault: false)],
        };

        Assert.False(DensityChoice.For(ingredient, null, Limit).SpansForms);
    }

    [Fact]
    public void A_form_is_found_by_its_id_alone()
    {
        Assert.False(Given.Ingredient("salt").TryFindForm("Table, granulated", out var none));
        Assert.Null(none);
    }
}
