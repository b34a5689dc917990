using RubLab.Core.Faults;
using RubLab.Core.Formulas;

namespace RubLab.Core.Tests.Formulas;

public sealed class FormulaRulesTests
{
    [Fact]
    public void A_sound_draft_is_kept_as_authored()
    {
        var formula = Given.Draft(Given.Line("salt", "table", 3, "tbsp"), Given.Line("paprika", null, 0.25, "cup"))
            .WrittenFor(12, "lb", WeightBasis.Purchase).Sound();

        Assert.Equal("A mix", formula.Name);
        Assert.Equal(FormulaKind.Rub, formula.Kind);
        Assert.Equal(RatioBase.Green, formula.Base);
        Assert.Equal(AuthoringMode.Amounts, formula.Mode);
        Assert.Null(formula.Dose);
        Assert.Equal(12 * 453.59237, formula.WrittenForGrams!.Value, 1e-9);
        Assert.Equal(WeightBasis.Purchase, formula.WrittenForIs);
        Assert.Equal([3, 0.25], formula.Lines.Select(l => l.Amount));
        Assert.Equal(["tbsp", "cup"], formula.Lines.Select(l => l.Unit.Symbol));
        Assert.Equal("table", formula.Lines[0].NamedForm!.Id);
        Assert.Null(formula.Lines[1].NamedForm);
        Assert.Equal("ground", formula.Lines[1].Form.Id);
    }

    [Fact]
    public void A_cure_keeps_its_nitrite_and_nitrate_and_assumes_none()
    {
        var formula = Given.Draft(
            Given.Line("curing-salt", null, 1, "%") with { NitriteFraction = 0.0625, NitrateFraction = 0.04 },
            Given.Line("paprika", "ground", 1, "%")).Sound();

        Assert.Equal(0.0625, formula.Lines[0].NitriteFraction);
        Assert.Equal(0.04, formula.Lines[0].NitrateFraction);
        Assert.Null(formula.Lines[1].NitriteFraction);
        Assert.Null(formula.Lines[1].NitrateFraction);
    }

    [Theory]
    [InlineData("g", AuthoringMode.Amounts)]
    [InlineData("cup", AuthoringMode.Amounts)]
    [InlineData("%", AuthoringMode.Ratios)]
    [InlineData("parts-by-mass", AuthoringMode.PartsByMass)]
    [InlineData("parts-by-volume", AuthoringMode.PartsByVolume)]
    public void The_units_say_how_a_formula_was_written(string unit, AuthoringMode mode) =>
        Assert.Equal(mode, Given.Draft(Given.Line("salt", "table", 1, unit)).Dosed(20).Sound().Mode);

    [Fact]
    public void A_dose_is_kept_in_grams_per_kilogram() =>
        Assert.Equal(22, Given.Draft(Given.Line("salt", "table", 1, "parts-by-mass")).Dosed(2.2, "%").Sound().Dose!.Value, 1e-12);

    [Fact]
    public void Masses_and_volumes_mix() =>
        Given.Draft(Given.Line("salt", "table", 10, "g"), Given.Line("paprika", "ground", 1, "tbsp")).WrittenFor(1, "kg").Sound();

    [Theory]
    [InlineData("g", "%")]
    [InlineData("tbsp", "parts-by-volume")]
    [InlineData("parts-by-mass", "parts-by-volume")]
    [InlineData("g/kg", "parts-by-mass")]
    public void Manners_of_writing_do_not_mix(string first, string second)
    {
        var faults = FaultsOf(Given.Draft(Given.Line("salt", "table", 1, first), Given.Line("paprika", "ground", 1, second)).Dosed(20));

        Assert.Equal([("/lines/1/amount/unit", "mixed-authoring")], faults);
    }

    [Theory]
    [InlineData("%-of-liquid")]
    [InlineData("%-of-water")]
    [InlineData("g/100cm2")]
    [InlineData("g/mL")]
    [InlineData("mm")]
    [InlineData("C")]
    [InlineData("h")]
    public void A_line_is_no_length_temperature_or_time(string unit) => Assert.Equal(
        [("/lines/0/amount/unit", "unit-not-allowed")],
        FaultsOf(Given.Draft(Given.Line("salt", "table", 1, unit), Given.Line("salt", "table", 1, "g/kg"))));

    [Theory]
    [InlineData("parts-by-mass")]
    [InlineData("parts-by-volume")]
    public void Parts_need_a_dose(string unit) =>
        Assert.Equal([("/dose", "dose-required")], FaultsOf(Given.Draft(Given.Line("salt", "table", 1, unit))));

    [Fact]
    public void Amounts_need_the_weight_they_were_written_for_or_a_dose()
    {
        var draft = Given.Draft(Given.Line("salt", "table", 10, "g"));

        Assert.Equal([("/writtenFor", "written-for-required")], FaultsOf(draft));
        draft.WrittenFor(1, "kg").Sound();
        draft.Dosed(10).Sound();
    }

    [Fact]
    public void Ratios_need_neither() => Given.Draft(Given.Line("salt", "table", 10, "g/kg")).Sound();

    [Fact]
    public void A_formula_by_area_needs_a_dose_by_area()
    {
        var draft = Given.Draft(Given.Line("salt", "table", 10, "g")) with { Base = RatioBase.Area };

        Assert.Equal([("/dose", "dose-required")], FaultsOf(draft.WrittenFor(1, "kg")));
        Assert.Equal([("/dose/unit", "unit-not-allowed")], FaultsOf(draft.Dosed(20)));
        Assert.Equal(3, draft.Dosed(3, "g/100cm2").Sound().Dose);
    }

    [Theory]
    [InlineData("g/100cm2")]
    [InlineData("g")]
    [InlineData("%-of-liquid")]
    public void A_dose_on_a_weight_is_a_ratio(string unit)
    {
        var log = new FaultLog();

        Assert.Null(Formula.Create(Given.Draft(Given.Line("salt", "table", 10, "g")).Dosed(20, unit), log.Root));

        var fault = Assert.Single(log.Faults);
        Assert.Equal(("/dose/unit", "unit-not-allowed"), (fault.Pointer, fault.Code));
        Assert.Equal(["g/kg", "%", "ppm"], Assert.IsType<string[]>(fault.Parameters["allowed"]));
        Assert.Equal(unit, fault.Parameters["unit"]);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0, 1e-310)]
    [InlineData(5e-324, 5e-324)]
    [InlineData(2e-300, 0)]
    public void A_formula_of_nothing_is_refused(double first, double second) => Assert.Equal(
        [("/lines", "all-zero")],
        FaultsOf(Given.Draft(Given.Line("salt", "table", first, "mg"), Given.Line("paprika", "ground", second, "mg")).WrittenFor(1, "kg")));

    [Fact]
    public void One_line_of_something_is_enough() => Given.Draft(
        Given.Line("salt", "table", 0, "g/kg"), Given.Line("paprika", "ground", 0.001, "g/kg")).Sound();

    [Theory]
    [InlineData("ancho-dried", "whole", "tbsp")]
    [InlineData("ancho-dried", null, "cup")]
    [InlineData("sodium-chloride", null, "mL")]
    [InlineData("sodium-chloride", null, "parts-by-volume")]
    public void A_volume_needs_a_density(string ingredient, string? form, string unit) => Assert.Equal(
        [("/lines/1/amount", "no-density")],
        FaultsOf(Given.Draft(
            Given.Line("salt", "table", 1, unit), Given.Line(ingredient, form, 1, unit)).Dosed(20)));

    [Fact]
    public void A_missing_density_names_the_ingredient_and_the_form()
    {
        var log = new FaultLog();

        Formula.Create(Given.Draft(Given.Line("ancho-dried", "whole", 1, "cup")).Dosed(20), log.Root);

        var fault = Assert.Single(log.Faults);
        Assert.Equal("ancho-dried", fault.Parameters["ingredient"]);
        Assert.Equal("whole", fault.Parameters["form"]);
    }

    [Fact]
    public void A_dose_that_could_not_be_read_is_not_asked_for_again()
    {
        var log = new FaultLog();

        Formula.Create(Given.Draft(Given.Line("salt", "table", 1, "parts-by-mass")).Dosed(20) with { Dose = null }, log.Root);

        Assert.True(log.IsClean);
    }

    [Fact]
    public void The_form_of_a_line_is_the_one_named() => Assert.Equal(
        "flake-dense", Given.Draft(Given.Line("salt", "flake-dense", 1, "%")).Sound().Lines[0].Form.Id);

    [Fact]
    public void A_mass_needs_none() => Given.Draft(Given.Line("ancho-dried", "whole", 1, "g")).Dosed(20).Sound();

    [Fact]
    public void Every_broken_rule_is_noted_at_once() => Assert.Equal(
        [
            ("/lines/1/amount/unit", "mixed-authoring"), ("/lines/2/amount/unit", "unit-not-allowed"),
            ("/dose", "dose-required"), ("/lines", "all-zero"), ("/lines/0/amount", "no-density"),
        ],
        FaultsOf(Given.Draft(
            Given.Line("ancho-dried", "whole", 0, "parts-by-volume"), Given.Line("salt", "table", 0, "g"), Given.Line("salt", "table", 0, "min"))));

    [Fact]
    public void What_could_not_be_read_makes_no_formula_and_no_second_fault()
    {
        var line = Given.Line("salt", "table", 1, "%");
        FormulaDraft[] drafts =
        [
            Given.Draft(line) with { Name = null },
            Given.Draft(line) with { Kind = null },
            Given.Draft(line, line with { Ingredient = null }),
            Given.Draft(line, line with { Amount = null }),
            Given.Draft(line, line with { Unit = null }),
            Given.Draft(),
        ];

        Assert.All(drafts, draft =>
        {
            var log = new FaultLog();
            Assert.Null(Formula.Create(draft, log.Root));
            Assert.True(log.IsClean);
        });
    }

    [Fact]
    public void A_fault_from_elsewhere_does_not_hide_a_sound_formula()
    {
        var log = new FaultLog();
        log.Root.At("other").Fault("bad", "Bad.");

        Assert.NotNull(Formula.Create(Given.Draft(Given.Line("salt", "table", 1, "%")), log.Root));
    }

    [Fact]
    public void A_fault_points_below_the_formula_s_own_place()
    {
        var log = new FaultLog();

        Formula.Create(Given.Draft(Given.Line("salt", "table", 1, "g")), log.Root.At("treatments").At(2).At("formula"));

        Assert.Equal("/treatments/2/formula/writtenFor", Assert.Single(log.Faults).Pointer);
    }

    private static List<(string Pointer, string Code)> FaultsOf(FormulaDraft draft)
    {
        var log = new FaultLog();
        Assert.Null(Formula.Create(draft, log.Root));
        return [.. log.Faults.Select(f => (f.Pointer, f.Code))];
    }
}
