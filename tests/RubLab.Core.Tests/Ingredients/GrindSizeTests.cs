using CsCheck;
using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;
using RubLab.Core.Sources;

namespace RubLab.Core.Tests.Ingredients;

public sealed class GrindSizeTests
{
    [Theory]
    [InlineData(250, "fine")]
    [InlineData(400, "fine")]
    [InlineData(601, "ground")]
    [InlineData(1000, "ground")]
    [InlineData(1180, "coarse")]
    [InlineData(1999, "coarse")]
    [InlineData(3000, "cracked")]
    [InlineData(4800, "whole-sized")]
    [InlineData(7000, "whole")]
    public void A_size_inside_a_form_picks_it_with_its_own_density(double micrometres, string form)
    {
        var choice = GrindSize.Choose(Given.Ingredient("black-pepper"), micrometres)!;

        Assert.Equal(form, choice.Form.Id);
        Assert.Same(choice.Form.Density, choice.Density);
        Assert.False(choice.SpansForms);
    }

    [Theory]
    [InlineData(30, 600, "ground")]
    [InlineData(10, 2000, "cracked")]
    [InlineData(16, 1180, "coarse")]
    public void A_mesh_is_the_opening_of_its_sieve(double mesh, double micrometres, string form)
    {
        var sieve = Seed.Catalogue.Sieves.Single(s => s.UsMesh == mesh);

        Assert.Equal(micrometres, sieve.OpeningMicrometres);
        Assert.Equal(form, GrindSize.Choose(Given.Ingredient("black-pepper"), sieve.OpeningMicrometres)!.Form.Id);
    }

    [Theory]
    [InlineData(249.9)]
    [InlineData(7000.1)]
    public void A_size_outside_all_that_was_measured_is_refused(double micrometres)
    {
        Assert.Null(GrindSize.Choose(Given.Ingredient("black-pepper"), micrometres));
        Assert.Equal((250, 7000), GrindSize.Span(Given.Ingredient("black-pepper")));
    }

    [Fact]
    public void Between_two_forms_the_density_goes_with_the_logarithm_of_the_size()
    {
        // From 200 to 800 um: 400 um stands half way between them in the logarithm, and so does each end of the band.
        var choice = GrindSize.Choose(Pepper(Sized("fine", 0.4, 50, 200, Confidence.High), Sized("coarse", 0.6, 800, 3200, Confidence.Low)), 400)!;

        Assert.Equal(0.5, choice.Density!.GramsPerMillilitre.Typical, 1e-12);
        Assert.Equal(0.5 * 0.9, choice.Density.GramsPerMillilitre.Low, 1e-12);
        Assert.Equal(0.5 * 1.1, choice.Density.GramsPerMillilitre.High, 1e-12);
        Assert.Equal(Confidence.Low, choice.Density.Citation.Confidence);
        Assert.Equal("grind", choice.Density.WidenedBy);
    }

    [Fact]
    public void Between_two_forms_the_density_lies_between_theirs_and_never_jumps_back() =>
        Law.Holds(Gen.Select(Gen.Double[0.2, 1.2], Gen.Double[0.2, 1.2], Gen.Double[201, 400], Gen.Double[400, 799]), 5_000, c =>
        {
            var (fine, coarse, one, other) = c;
            var pepper = Pepper(Sized("fine", fine, 50, 200, Confidence.High), Sized("coarse", coarse, 800, 3200, Confidence.High));
            var first = GrindSize.Choose(pepper, one)!.Density!.GramsPerMillilitre.Typical;
            var second = GrindSize.Choose(pepper, other)!.Density!.GramsPerMillilitre.Typical;

            Assert.InRange(first, Math.Min(fine, coarse), Math.Max(fine, coarse));
            Assert.True((second - first) * (coarse - fine) >= -1e-12);
        });

    [Fact]
    public void The_density_does_not_jump_where_a_form_s_sizes_end() =>
        Law.Holds(Gen.Select(Gen.Double[0.2, 1.2], Gen.Double[0.2, 1.2], Gen.Double[50, 300], Gen.Double[400, 900], Gen.Bool), 5_000, c =>
        {
            var (fine, coarse, end, start, coarseFirst) = c;
            var (below, above) = (Sized("fine", fine, 20, end, Confidence.High), Sized("coarse", coarse, start, 3000, Confidence.High));
            var pepper = coarseFirst ? Pepper(above, below) : Pepper(below, above);

            Meets(end, end * (1 + 1e-10));
            Meets(start, start * (1 - 1e-10));

            void Meets(double inside, double outside)
            {
                var (held, next) = (GrindSize.Choose(pepper, inside)!.Density!, GrindSize.Choose(pepper, outside)!.Density!);
                Assert.NotEqual("grind", held.WidenedBy);
                Assert.Equal("grind", next.WidenedBy);
                Assert.Equal(held.GramsPerMillilitre.Low, next.GramsPerMillilitre.Low, 1e-9);
                Assert.Equal(held.GramsPerMillilitre.Typical, next.GramsPerMillilitre.Typical, 1e-9);
                Assert.Equal(held.GramsPerMillilitre.High, next.GramsPerMillilitre.High, 1e-9);
            }
        });

    [Fact]
    public void No_shipped_ingredient_jumps_where_a_form_gives_way_to_a_gap() => Assert.All(
        Seed.Catalogue.Ingredients.SelectMany(i => i.Forms
            .Where(f => f is { Density: not null, SizeLowMicrometres: not null, SizeHighMicrometres: not null })
            .SelectMany(f => new[] { (i, f.SizeLowMicrometres!.Value, 1 - 1e-10), (i, f.SizeHighMicrometres!.Value, 1 + 1e-10) })),
        edge =>
        {
            var (ingredient, size, beyond) = edge;
            var held = GrindSize.Choose(ingredient, size)!.Density!;

            // Where the next form begins at once, or holds the size too, the rule itself says to step.
            if (GrindSize.Choose(ingredient, size * beyond)?.Density is { WidenedBy: "grind" } next)
            {
                Assert.Equal(held.GramsPerMillilitre.Typical, next.GramsPerMillilitre.Typical, 1e-8);
                Assert.Equal(held.GramsPerMillilitre.Low, next.GramsPerMillilitre.Low, 1e-8);
                Assert.Equal(held.GramsPerMillilitre.High, next.GramsPerMillilitre.High, 1e-8);
            }
        });

    [Fact]
    public void Of_two_forms_that_end_at_one_size_the_gap_starts_from_the_one_that_holds_it()
    {
        var forms = new[]
        {
            Sized("wide", 0.3, 50, 200, Confidence.High), Sized("narrow", 0.4, 150, 200, Confidence.High),
            Sized("coarse", 0.6, 800, 1000, Confidence.High), Sized("open", 0.9, 800, 5000, Confidence.High),
        };
        Law.Holds(Gen.Shuffle(forms), 50, shuffled =>
        {
            Assert.Equal(0.4, GrindSize.Choose(Pepper(shuffled), 200.0000001)!.Density!.GramsPerMillilitre.Typical, 1e-8);
            Assert.Equal(0.6, GrindSize.Choose(Pepper(shuffled), 799.9999999)!.Density!.GramsPerMillilitre.Typical, 1e-8);
        });
    }

    [Fact]
    public void Of_two_forms_that_hold_a_size_the_narrower_one_is_meant_and_of_equal_ones_the_first()
    {
        var wide = Sized("wide", 0.4, 100, 1000, Confidence.High);
        var narrow = Sized("narrow", 0.5, 300, 600, Confidence.High);
        var same = Sized("same", 0.6, 300, 600, Confidence.High);

        Assert.Equal("narrow", GrindSize.Choose(Pepper(wide, narrow, same), 400)!.Form.Id);
        Assert.Equal("same", GrindSize.Choose(Pepper(same, wide, narrow), 400)!.Form.Id);
        Assert.Equal("wide", GrindSize.Choose(Pepper(wide, narrow, same), 700)!.Form.Id);
    }

    [Fact]
    public void The_nearest_forms_on_either_side_are_taken_whatever_their_order()
    {
        IngredientForm[] forms =
        [
            Sized("dust", 0.2, 10, 20, Confidence.High), Sized("fine", 0.4, 50, 200, Confidence.High),
            Sized("coarse", 0.6, 800, 3200, Confidence.High), Sized("whole", 0.9, 5000, 7000, Confidence.High),
        ];
        Law.Holds(Gen.Shuffle(forms), 50, shuffled =>
            Assert.Equal(0.5, GrindSize.Choose(Pepper(shuffled), 400)!.Density!.GramsPerMillilitre.Typical, 1e-12));
    }

    [Fact]
    public void An_ingredient_without_sized_forms_has_no_answer()
    {
        var oil = Given.MadeUp("oil", Band.Exact(0.92), default, 0);

        Assert.Null(GrindSize.Choose(oil, 400));
        Assert.Null(GrindSize.Span(oil));
    }

    private static IngredientForm Sized(string id, double density, double low, double high, Confidence confidence) =>
        Given.Form(id, new Band(density * 0.9, density, density * 1.1), isDefault: false, confidence) with { SizeLowMicrometres = low, SizeHighMicrometres = high };

    private static Ingredient Pepper(params IngredientForm[] forms) => Given.MadeUp("pepper", Band.Exact(0.5), default, 0) with { Forms = forms };
}
