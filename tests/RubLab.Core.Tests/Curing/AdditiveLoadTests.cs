using CsCheck;
using RubLab.Core.Formulas;
using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;
using RubLab.Core.Salt;
using RubLab.Core.Scaling;
using RubLab.Core.Tests.Published;

namespace RubLab.Core.Tests.Curing;

public sealed class AdditiveLoadTests
{
    private static readonly PileLine Meat = Given.Pieces("pork-loin", 4000) with { BonePercent = 0 };
    private static readonly List<PublishedCase> Cases = PublishedCase.Read("additive-loads.csv");

    public static TheoryData<string> Ids => new(Cases.Select(c => c.Id));

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_published_load_comes_out_as_printed(string id)
    {
        var published = Cases.Single(c => c.Id == id);
        var method = published.InputText("method");
        var grams = published.Input("grams");
        var whole = published.Input("whole");
        var carrier = Carrier(published);
        // Of a dry or ground cure the whole is the meat; of a pickle it is the pickle.
        var treatment = method switch
        {
            "injection" => Cures.Mix(carrier, grams, whole - grams, published.Input("pump") * 10, FormulaKind.Injection),
            "soak" => Cures.Mix(carrier, grams, whole - grams, published.Input("pickle") / published.Input("meat") * 1000, FormulaKind.Soak),
            _ => Cures.Mix(carrier, 1, 0, grams / whole * 1000),
        };
        var line = method == "ground" ? Given.Pieces("beef-ground-80", 4000) : Meat;

        published.AssertIs(Cures.Ppm(published.InputText("additive"), line, treatment));
    }

    [Theory]
    // W09: 9 CFR 424.21(c), 16 oz of glucono delta lactone to 100 lb is printed as 1.0 percent. W10: an ounce of fumaric acid is printed as
    // 0.065 percent, the rule's own rounding up of 0.0625.
    [InlineData(16, 1.0, 1e-12)]
    [InlineData(1, 0.065, 0.0025000001)]
    public void Ounces_to_a_hundred_pounds_are_the_percent_the_rule_prints(double ounces, double percent, double tolerance) =>
        Assert.Equal(percent, 100 * UnitTable.Get("oz").ToBase(ounces) / UnitTable.Get("lb").ToBase(100), tolerance);

    [Fact]
    public void A_pumped_cure_brings_its_salt_to_the_meat()
    {
        // W29: (110 + 32 x (1 - 0.0588)) / 1266 x 120 g on 1200 g of meat is 13.2814 g, and CU02: 0.8689 % of salt without the cure's own.
        static Treatment Pumped(Ingredient cure) => (Given.Draft(
            Given.Line("water", null, 1000, "parts-by-mass"), Given.Line("sodium-chloride", null, 110, "parts-by-mass"),
            Given.Line("sucrose", null, 124, "parts-by-mass"), Given.Line(cure, 32, "parts-by-mass")) with { Kind = FormulaKind.Injection }).Dosed(100).Ratios().On(0);
        var line = Given.Pieces("pork-loin", 1200);
        double SaltOf(Ingredient cure) => SaltLedger.Of(Given.Pile(line), 0, [Pumped(cure)], isWeighed: true).SaltGramsPerKilogramGreen.Typical;

        Assert.Equal(13.2814, SaltOf(Cures.Declared(0.0588)) * 1.2, 0.00005);
        Assert.Equal(0.8689, SaltOf(Given.Ingredient("sodium-nitrite")) / 10, 0.00005);
    }

    [Fact]
    public void Half_a_percent_of_phosphate_on_green_is_less_of_the_injected_weight()
    {
        // 9 CFR 424.21(c): 5 % in pickle at 10 % pump. 0.4545 % of the injected weight.
        var green = Cures.Ppm("phosphate", Meat, Cures.Mix(Given.Ingredient("sodium-tripolyphosphate"), 5, 95, 100, FormulaKind.Injection));
        Assert.Equal(0.4545, green / 1.1 / 10_000, 0.00005);
    }

    [Fact]
    public void A_cure_of_six_and_a_quarter_percent_is_38_96_percent_sodium()
    {
        // 0.0625 x 0.33321 + 0.9375 x 0.39337, by stoichiometry.
        Assert.Equal(38.96, Cures.Declared(0.0625).SodiumMilligramsPer100Grams / 1000, 0.005);
        Assert.Equal(38.96, Given.Ingredient("cure-6-25").SodiumMilligramsPer100Grams / 1000, 0.005);
        Assert.Equal(93.75, Cures.Declared(0.0625).SaltGramsPer100Grams.Typical, 1e-9);
        Assert.Equal(89.75, Cures.Declared(0.0625, 0.04).SaltGramsPer100Grams.Typical, 1e-9);
        Assert.Equal(38.469, Cures.Declared(0.0625, 0.04).SodiumMilligramsPer100Grams / 1000, 0.0005);
    }

    [Theory]
    // 9 CFR 424.22(b) prints the pairs; 246 is cut off from 246.7, the others are the nearest whole.
    [InlineData(120, 148)]
    [InlineData(100, 123)]
    [InlineData(40, 49)]
    [InlineData(80, 99)]
    [InlineData(200, 246)]
    public void The_two_nitrites_are_told_in_the_pairs_the_rule_prints(double sodium, double potassium)
    {
        var computed = sodium * Seed.Catalogue.Constants.PotassiumPerSodiumNitrite;
        Assert.Equal(potassium, sodium == 200 ? Math.Floor(computed) : Math.Round(computed));
        // And as much of the potassium salt on the meat counts as that much of the sodium salt.
        Assert.Equal(sodium, Cures.Ppm("nitrite", Meat, Cures.Mix(Given.Ingredient("potassium-nitrite"), 1, 0, computed / 1000)), 0.01);
    }

    [Fact]
    public void What_stays_does_not_matter_and_how_often_it_goes_on_does()
    {
        var once = Cures.Mix(Cures.Declared(0.0625), 1, 9, 20);

        Assert.Equal(125, Cures.Ppm("nitrite", Meat, once), 1e-9);
        Assert.Equal(125, Cures.Ppm("nitrite", Meat, once with { RetainedPercent = new Band(10, 20, 30) }), 1e-9);
        Assert.Equal(375, Cures.Ppm("nitrite", Meat, once with { Applications = 3 }), 1e-9);
        Assert.Equal(62.5, Cures.Ppm("nitrite", Meat, once with { DoseGramsPerKilogram = 10 }), 1e-9);
    }

    [Fact]
    public void The_piece_that_gets_most_stands_for_its_line()
    {
        var line = Given.Pieces("pork-loin", 4000, 2000) with { DoseFactors = [1, 1.5] };
        Assert.Equal(187.5, Cures.Ppm("nitrite", line, Cures.Mix(Cures.Declared(0.0625), 1, 9, 20)), 1e-9);
    }

    [Fact]
    public void A_piece_that_took_more_than_was_planned_carries_more()
    {
        var injection = Cures.Mix(Cures.Declared(0.0625), 1, 99, 100, FormulaKind.Injection);
        var heavy = Meat with { WeighedBackGrams = [4800] };
        var light = Meat with { WeighedBackGrams = [4100], IsWeighedBackDrained = true };

        Assert.Equal(62.5, Cures.Ppm("nitrite", Meat, injection), 1e-9);
        Assert.Equal(125, Cures.Ppm("nitrite", heavy, injection), 1e-9);
        // Less found after draining proves nothing about what was put in.
        Assert.Equal(62.5, Cures.Ppm("nitrite", light, injection), 1e-9);
    }

    [Fact]
    public void Water_and_ice_are_counted_of_all_ingredients()
    {
        // 30 g of ice and 20 g of seasoning on 950 g of meat: 3 % of the whole.
        var ground = Given.Pieces("beef-ground-80", 950);
        var mix = Cures.Mix(Given.Ingredient("ice"), 30, 20, 50 / 0.95);
        Assert.Equal(30_000, Cures.Ppm("water", ground, mix), 1e-6);
    }

    [Fact]
    public void Loads_are_linear_and_do_not_hang_on_the_order() => Law.Holds(
        Gen.Select(Gen.Double[0.001, 0.2], Gen.Double[1, 60], Gen.Double[1, 60], Gen.Double[0.5, 3]), 2_000, c =>
        {
            var (fraction, first, second, times) = c;
            var a = Cures.Mix(Cures.Declared(fraction), 1, 4, first);
            var b = Cures.Mix(Cures.Declared(fraction), 1, 19, second, FormulaKind.Injection);
            var together = Cures.Ppm("nitrite", Meat, a, b);

            Assert.Equal(together, Cures.Ppm("nitrite", Meat, b, a), 1e-9 * together);
            Assert.Equal(together, Cures.Ppm("nitrite", Meat, a) + Cures.Ppm("nitrite", Meat, b), 1e-9 * together);
            Assert.Equal(
                together * times,
                Cures.Ppm("nitrite", Meat, a with { DoseGramsPerKilogram = first * times }, b with { DoseGramsPerKilogram = second * times }),
                1e-9 * together * times);
        });

    private static Ingredient Carrier(PublishedCase published) => published.InputText("additive") switch
    {
        "nitrite" => Cures.Declared(published.Input("fraction")),
        "nitrate" => Given.Ingredient("sodium-nitrate"),
        "ascorbate" => Given.Ingredient("sodium-erythorbate"),
        "ascorbic-acid" => Given.Ingredient("ascorbic-acid"),
        _ => Given.Ingredient("tetrasodium-pyrophosphate"),
    };
}
