using CsCheck;
using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;

namespace RubLab.Core.Tests.Ingredients;

public sealed class ConversionTests
{
    private const double Limit = 15;

    private static readonly Unit[] MassesAndVolumes =
        [.. UnitTable.All.Where(u => u.Dimension is Dimension.Mass or Dimension.Volume)];

    private static readonly Gen<(Unit From, Unit To, double Value)> Cases =
        Gen.Select(Gen.Int[0, MassesAndVolumes.Length - 1], Gen.Int[0, MassesAndVolumes.Length - 1], Gen.Double[0.001, 1e4])
            .Select((from, to, value) => (MassesAndVolumes[from], MassesAndVolumes[to], value));

    [Fact]
    public void A_cup_of_table_salt_weighs_sixteen_tablespoons()
    {
        var conversion = Of("salt", "table", 1, "cup", "g");

        Assert.Equal(288, conversion.Amount.Typical, 1e-9);
        Assert.Equal("table", conversion.Choice!.Form.Id);
    }

    [Fact]
    public void Masses_need_no_density()
    {
        var conversion = Of("ancho-dried", null, 1, "lb", "oz");

        Assert.True(conversion.Amount.IsExact);
        Assert.Equal(16, conversion.Amount.Typical, 1e-12);
        Assert.Null(conversion.Choice);
    }

    [Fact]
    public void A_form_without_a_density_does_not_convert()
    {
        var ancho = Given.Ingredient("ancho-dried");

        Assert.Null(Conversion.Of(ancho, null, 1, UnitTable.Get("cup"), UnitTable.Get("g"), Limit));
        Assert.Null(Conversion.Of(ancho, null, 1, UnitTable.Get("g"), UnitTable.Get("cup"), Limit));
    }

    [Theory]
    [InlineData("g/kg", "g")]
    [InlineData("g", "in")]
    [InlineData("parts-by-volume", "mL")]
    public void Only_masses_and_volumes_convert(string from, string to) => Assert.Throws<ArgumentException>(
        () => Conversion.Of(Given.Ingredient("salt"), null, 1, UnitTable.Get(from), UnitTable.Get(to), Limit));

    [Fact]
    public void A_heavier_salt_fills_less_of_the_spoon()
    {
        var conversion = Of("salt", "fine-sea", 100, "g", "mL");

        Assert.Equal(100 / 1.345, conversion.Amount.Low, 1e-9);
        Assert.Equal(100 / 1.185, conversion.Amount.Typical, 1e-9);
        Assert.Equal(100 / (1.185 * 0.9), conversion.Amount.High, 1e-9);
    }

    [Fact]
    public void There_and_back_gives_the_amount_again() => Law.Holds(Cases, 10_000, c =>
    {
        var ingredient = Given.Ingredient("garlic-powder");
        var there = Conversion.Of(ingredient, ingredient.DefaultForm, c.Value, c.From, c.To, Limit)!;
        var back = Conversion.Of(ingredient, ingredient.DefaultForm, there.Amount.Typical, c.To, c.From, Limit)!;

        Assert.Equal(c.Value, back.Amount.Typical, c.Value * 1e-13);
    });

    [Fact]
    public void A_band_there_and_a_band_back_hold_the_amount() => Law.Holds(Cases, 10_000, c =>
    {
        var ingredient = Given.Ingredient("salt");
        var there = Conversion.Of(ingredient, null, c.Value, c.From, c.To, Limit)!.Amount;
        var fromLow = Conversion.Of(ingredient, null, there.Low, c.To, c.From, Limit)!.Amount;
        var fromHigh = Conversion.Of(ingredient, null, there.High, c.To, c.From, Limit)!.Amount;

        Assert.InRange(c.Value, fromLow.Low * (1 - 1e-13), fromLow.High * (1 + 1e-13));
        Assert.InRange(c.Value, fromHigh.Low * (1 - 1e-13), fromHigh.High * (1 + 1e-13));
    });

    [Fact]
    public void Twice_the_amount_converts_to_twice_as_much() => Law.Holds(Cases, 10_000, c =>
    {
        var ingredient = Given.Ingredient("paprika");
        var once = Conversion.Of(ingredient, null, c.Value, c.From, c.To, Limit)!.Amount;

        Assert.Equal(once.Times(2), Conversion.Of(ingredient, null, c.Value * 2, c.From, c.To, Limit)!.Amount);
    });

    private static Conversion Of(string ingredient, string? form, double value, string from, string to)
    {
        var found = Given.Ingredient(ingredient);
        IngredientForm? named = null;
        Assert.True(form is null || found.TryFindForm(form, out named));
        return Conversion.Of(found, named, value, UnitTable.Get(from), UnitTable.Get(to), Limit)!;
    }
}
