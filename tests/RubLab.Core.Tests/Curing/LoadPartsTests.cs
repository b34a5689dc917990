using RubLab.Core.Curing;
using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
using RubLab.Core.Scaling;

namespace RubLab.Core.Tests.Curing;

/// <summary>What a load is made of: which additives it lists, of what base, and what does not count.</summary>
public sealed class LoadPartsTests
{
    private static readonly PileLine Loin = Given.Pieces("pork-loin", 4000) with { BonePercent = 0, CookYieldPercent = Band.Exact(75) };
    private static readonly PileLine Ground = Given.Pieces("beef-ground-80", 1000);

    [Fact]
    public void Additives_are_listed_by_name_and_what_is_not_brought_is_not_listed()
    {
        // Nothing of the erythorbate is weighed in.
        var mix = Given.Draft(
            Given.Line("sodium-tripolyphosphate", null, 1, "parts-by-mass"), Given.Line("sodium-erythorbate", null, 0, "parts-by-mass"),
            Given.Line(Cures.Declared(0.0625, 0.04), 1, "parts-by-mass"), Given.Line("water", null, 98, "parts-by-mass"));

        var loads = Of(Loin, (mix with { Kind = FormulaKind.Injection }).Dosed(100).Ratios().On(0));

        Assert.Equal(["liquid", "nitrate", "nitrite", "phosphate", "water"], loads.Select(l => l.Additive));
    }

    [Fact]
    public void Only_ground_meat_that_something_is_mixed_into_has_a_load_of_fat()
    {
        var salt = Cures.Mix(Given.Ingredient("sodium-chloride"), 1, 1, 20);

        Assert.Contains(Of(Ground, salt), l => l.Additive == "fat");
        Assert.DoesNotContain(Of(Loin, salt), l => l.Additive == "fat");
        Assert.Empty(Of(Ground));
    }

    [Fact]
    public void Fat_of_ground_meat_that_nobody_measured_is_not_known()
    {
        var line = Ground with { Cut = Ground.Cut with { Composition = null }, Product = "fresh-sausage" };
        var mix = Cures.Mix(Given.Ingredient("sodium-chloride"), 1, 1, 20);

        Assert.Equal(LoadKnowledge.Unknown, Of(line, mix).Single(l => l.Additive == "fat").Knowledge);
        Assert.Equal(LoadKnowledge.Assumed, Of(Ground, mix).Single(l => l.Additive == "fat").Knowledge);
        var check = Cures.Check("fat-fresh-sausage", line, mix);
        Assert.Null(check.MeasuredPartsPerMillion);
        Assert.Contains("fat", check.Advice, StringComparison.Ordinal);
    }

    // 25 g of ice and 25 g of salt to a kilogram, in two mixes: 25 of 1050 g is 2.381 %.
    [Fact]
    public void Everything_that_is_mixed_in_is_of_the_ingredients()
    {
        var ice = Cures.Mix(Given.Ingredient("ice"), 1, 0, 25);
        var salt = Cures.Mix(Given.Ingredient("sodium-chloride"), 1, 0, 25);

        Assert.Equal(23_810, Cures.Ppm("water", Ground, ice, salt), 0.5);
    }

    [Fact]
    public void The_liquid_of_a_soak_is_no_part_of_what_a_pump_leaves()
    {
        var pumped = Cures.Mix(Given.Ingredient("sodium-chloride"), 1, 9, 50, FormulaKind.Injection) with { RetainedPercent = Band.Exact(90) };
        var soaked = Cures.Mix(Given.Ingredient("sodium-chloride"), 1, 9, 1000, FormulaKind.Soak);

        var liquid = Of(Loin, pumped, soaked).Single(l => l.Additive == "liquid");

        // 50 g to a kilogram, nine tenths of which stay.
        Assert.Equal([45_000, 0], liquid.Shares.Select(s => Math.Round(s.PartsPerMillion.Typical, 6)));
        Assert.Equal(LoadKnowledge.Unknown, liquid.Knowledge);
    }

    [Fact]
    public void What_a_rubbed_piece_weighs_afterwards_does_not_change_its_load()
    {
        var rub = Cures.Mix(Cures.Declared(0.0625), 1, 9, 20);
        Assert.Equal(125, Cures.Ppm("nitrite", Loin with { WeighedBackGrams = [4800] }, rub), 1e-9);
    }

    // Three quarters of the green weight are left when cooked: 20 g to a kilogram of it are 15 to a kilogram of green meat.
    [Fact]
    public void Meat_without_a_weight_carries_what_a_kilogram_of_it_would()
    {
        var mix = (Given.Draft(Given.Line(Cures.Declared(0.0625), 1, "parts-by-mass"), Given.Line("sucrose", null, 9, "parts-by-mass")) with { Base = RatioBase.Cooked })
            .Dosed(20).Ratios().On(0);

        Assert.Equal(15 * 0.1 * 0.0625 * 1000, Cures.Ppm("nitrite", Loin with { WeighedGrams = [] }, mix), 1e-9);
        Assert.Equal(15 * 0.1 * 0.0625 * 1000, Cures.Ppm("nitrite", Loin, mix), 1e-9);
    }

    // A card of one ingredient is that ingredient, whatever a spoon of it weighs: put on by weight its load is exact, by the spoon it is not.
    [Fact]
    public void A_card_put_on_by_weight_has_no_doubt_of_its_spoons()
    {
        var cure = Cures.Declared(0.0625);
        var loose = Given.Form("loose", new Band(0.8, 1.2, 1.6), isDefault: true);
        var card = Given.Draft(new FormulaLineDraft(cure with { Forms = [loose] }, loose, 1, UnitTable.Get("tsp"), null, null)).WrittenFor(5, "kg").Ratios().On(0);

        var bySpoon = Nitrite(card);
        var byWeight = Nitrite(card with { DoseGramsPerKilogram = 2 });

        Assert.Equal(1.2 / 0.8, bySpoon.Typical / bySpoon.Low, 1e-9);
        Assert.Equal(1.6 / 1.2, bySpoon.High / bySpoon.Typical, 1e-9);
        Assert.Equal((125, 125, 125), (Math.Round(byWeight.Low, 9), Math.Round(byWeight.Typical, 9), Math.Round(byWeight.High, 9)));

        static Band Nitrite(Treatment card) =>
            AdditiveLoads.Of(Given.Pile(Loin), 0, [card], isWeighed: false).Single(l => l.Additive == "nitrite").PartsPerMillion;
    }

    // Potassium over sodium nitrite, 85.10 over 69.00 by their molar masses.
    [Fact]
    public void A_share_counts_by_the_salt_or_by_its_sodium_salt_as_its_limit_does()
    {
        var share = Of(Loin, Cures.Mix(Given.Ingredient("potassium-nitrite"), 1, 0, 0.1)).Single(l => l.Additive == "nitrite").Shares[0];

        Assert.Equal(100, Limit("nitrite-dry").Counted(share).Typical, 1e-9);
        Assert.Equal(100 * 69.00 / 85.10, Limit("nitrite-bacon-dry").Counted(share).Typical, 0.01);

        static AdditiveLimit Limit(string id) => Seed.Catalogue.AdditiveLimits.Single(l => l.Id == id);
    }

    private static IReadOnlyList<AdditiveLoad> Of(PileLine line, params Treatment[] treatments) =>
        AdditiveLoads.Of(Given.Pile(line), 0, treatments, isWeighed: true);
}
