using System.Globalization;
using RubLab.Core.Ingredients;
using RubLab.Core.Meat;
using RubLab.Core.Sources;
using RubLab.Core.Yields;

namespace RubLab.Core.Tests.Catalogues;

public sealed class SeedIntegrityTests
{
    private static readonly List<Dictionary<string, string>> Figures =
        PlainCsv.Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Published", "seed-figures.csv")));

    [Fact]
    public void Every_row_names_a_source_that_is_listed_and_every_source_is_used()
    {
        // The grammar of the columns is about the files themselves and stands on no source.
        var used = SeedFilesOnDisk.Tables.Where(t => t.Key is not ("sources.csv" or "columns.csv")).SelectMany(t => t.Value.SelectMany(row =>
        {
            Assert.NotEmpty(row["source_id"]);
            return row.Where(cell => cell.Key.EndsWith("source_id", StringComparison.Ordinal) && cell.Value.Length > 0).Select(cell => cell.Value);
        }));

        Assert.Equal(
            SeedFilesOnDisk.Column("sources.csv", "source_id").Order(StringComparer.Ordinal),
            used.Append(OwnDensity.SourceId).Append(OwnYield.SourceId).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_measure_is_of_a_form_listed_for_its_ingredient() => Assert.Empty(
        SeedFilesOnDisk.Tables["measures.csv"].Select(m => $"{m["ingredient_id"]} {m["form_id"]}")
            .Except(SeedFilesOnDisk.Tables["forms.csv"].Select(f => $"{f["ingredient_id"]} {f["form_id"]}")));

    [Fact]
    public void A_measure_counts_half_its_last_printed_digit_as_rounding() => Assert.All(
        SeedFilesOnDisk.Tables["measures.csv"],
        measure => Assert.Contains(measure["weight_rounding_g"], measure["weight_g"].Contains('.') ? ["0.05"] : new[] { "0.05", "0.5" }));

    [Fact]
    public void A_form_with_a_density_says_how_far_to_trust_it() => Assert.All(
        SeedFilesOnDisk.Tables["forms.csv"],
        form => Assert.Equal(
            form["measure_sequence"].Length > 0 || form["density_typical_g_per_ml"].Length > 0, form["confidence"].Length > 0));

    [Fact]
    public void A_form_has_its_density_from_a_measure_or_from_a_band_and_not_from_both() => Assert.All(
        SeedFilesOnDisk.Tables["forms.csv"],
        form =>
        {
            Assert.False(form["measure_sequence"].Length > 0 && form["density_typical_g_per_ml"].Length > 0);
            Assert.Equal(form["density_typical_g_per_ml"].Length > 0, form["band_from"].Length > 0);
        });

    [Fact]
    public void Composition_adds_up_to_no_more_than_the_whole() => Assert.All(
        Seed.Catalogue.Ingredients,
        i => Assert.InRange(
            (i.WaterGramsPer100Grams ?? 0) + (i.SugarsGramsPer100Grams ?? 0) + i.SaltGramsPer100Grams.Typical, 0, 100));

    [Fact]
    public void Percentages_of_meat_lie_between_none_and_all() => Assert.All(Seed.Catalogue.Cuts, cut =>
    {
        Assert.InRange(cut.TrimLossPercent!.Band.High, 0, 99);
        Assert.InRange(cut.KeptInCookingPercent?.Band.High ?? 100, 1, 100);
        Assert.InRange(cut.BonePercent?.Band.High ?? 0, 0, 60);
        Assert.All(cut.CookYields, y => Assert.InRange(y.Percent.High, 1, 100));
        Assert.All(cut.CookYields, y => Assert.InRange(y.Percent.Low, 1, 100));
    });

    [Fact]
    public void No_cooking_yield_is_known_to_the_last_digit_and_one_of_a_single_pair_names_the_estimate_of_its_width() => Assert.All(
        Seed.Catalogue.Cuts.SelectMany(c => c.CookYields),
        yield =>
        {
            Assert.False(yield.Percent.IsExact);
            Assert.True(yield.WidthCitation is null || (yield.WidthCitation.SourceId, yield.WidthCitation.Confidence) == ("yield-spread-estimate", Confidence.Low));
            Assert.True(yield.WidthCitation is null || yield.Percent.High - yield.Percent.Low >= 10.4 - 1e-9);
        });

    [Fact]
    public void A_yield_printed_as_one_figure_takes_its_width_from_the_estimate() => Assert.All(
        SeedFilesOnDisk.Tables["cooking-yields.csv"].Where(row => row["yield_low_percent"] == row["yield_high_percent"]),
        row =>
        {
            var printed = double.Parse(row["yield_typical_percent"], CultureInfo.InvariantCulture);
            var read = Given.Cut(row["cut_id"]).CookYields.Single(y => y.Method == row["method"]).Percent;

            Assert.Equal((printed - 5.2, printed, printed + 5.2), (read.Low, read.Typical, read.High));
        });

    // The estimate's own reasoning: between cuts of a species cooked one way, the first pair of every row, pooled.
    [Fact]
    public void The_estimate_of_a_yield_s_width_is_the_spread_between_cuts_it_says_it_is()
    {
        var groups = SeedFilesOnDisk.Tables["cooking-yields.csv"]
            .Where(row => row["source_id"] == "usda-sr28-derived")
            .Select(row => (
                Group: $"{Given.Cut(row["cut_id"]).Species} {row["method"]}", Pair: row["locator"].Split(';')[0],
                Typical: double.Parse(row["yield_typical_percent"], CultureInfo.InvariantCulture)))
            .GroupBy(r => (r.Group, r.Pair), (key, rows) => (key.Group, rows.Last().Typical))
            .GroupBy(r => r.Group, r => r.Typical)
            .Select(g => g.ToList())
            .Where(g => g.Count > 1)
            .ToList();
        var squares = groups.Sum(g => g.Sum(y => (y - g.Average()) * (y - g.Average())));

        Assert.Equal((6, 31), (groups.Count, groups.Sum(g => g.Count)));
        Assert.Equal(5.2, Math.Sqrt(squares / groups.Sum(g => g.Count - 1)), 0.05);
        Assert.Equal(5.2, Seed.Catalogue.Constants.CookYieldSpread.Band.Typical);
    }

    [Fact]
    public void The_edition_is_as_full_as_it_is_said_to_be()
    {
        var ofUsda = SeedFilesOnDisk.Tables["ingredients.csv"].Where(row => row["source_id"] == "usda-sr28").ToList();

        Assert.Equal("2026.3", Seed.Catalogue.Version.Trim());
        Assert.InRange(ofUsda.Count, 138, int.MaxValue);
        Assert.All(ofUsda, row => Assert.Matches("[0-9]{5}", row["locator"]));
        Assert.InRange(Seed.Catalogue.Cuts.Count, 30, int.MaxValue);
        Assert.InRange(Directory.GetFiles(Repository.PathOf("seed-data", "formulas"), "*.json").Length, 16, int.MaxValue);
    }

    [Fact]
    public void Nothing_is_known_of_the_cooking_of_these_cuts_and_something_of_every_other()
    {
        string[] bare = ["pork-belly", "pork-country-style-ribs", "salmon-fillet", "trout-fillet", "turkey-wing"];

        Assert.Equal(bare, Seed.Catalogue.Cuts.Where(c => c.CookYields.Count == 0).Select(c => c.Id).Order(StringComparer.Ordinal));
        Assert.Equal(
            bare.Concat(["beef-rib-roast", "chicken-breast-skinless", "pork-center-loin-roast"]).Order(StringComparer.Ordinal),
            Seed.Catalogue.Cuts.Where(c => c.KeptInCookingPercent is null).Select(c => c.Id).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_cut_has_a_shape_its_own_size_fits() => Assert.All(Seed.Catalogue.Cuts, cut =>
    {
        var shape = cut.Shape!;
        Assert.InRange(shape.DensityKilogramsPerCubicMetre, 900, 1100);
        Assert.True(shape.LengthToThickness >= shape.WidthToThickness && shape.WidthToThickness >= 1, cut.Id);
    });

    [Fact]
    public void A_cut_is_compared_with_products_that_have_a_range() => Assert.Empty(
        Seed.Catalogue.Cuts.SelectMany(c => c.SaltProducts).Except(Seed.Catalogue.SaltRanges.Select(r => r.AppliesTo)));

    [Fact]
    public void What_is_made_of_ground_meat_is_a_product_of_the_reference_data() => Assert.Subset(
        Seed.Catalogue.Products.ToHashSet(StringComparer.Ordinal), GroundProducts.Ids.ToHashSet(StringComparer.Ordinal));

    [Fact]
    public void A_salt_range_has_a_bound_and_its_bounds_in_order() => Assert.All(Seed.Catalogue.SaltRanges, range =>
    {
        Assert.True(range.LowPercent is not null || range.HighPercent is not null);
        Assert.False(range.LowPercent > range.HighPercent);
        Assert.Equal(range.IsPublished, range.Citation.SourceId != "common-practice");
    });

    [Fact]
    public void Openings_fall_as_the_mesh_number_rises()
    {
        var sieves = Seed.Catalogue.Sieves;

        Assert.Equal(sieves.OrderBy(s => s.UsMesh), sieves);
        Assert.Equal(sieves.OrderByDescending(s => s.OpeningMicrometres), sieves);
    }

    [Theory]
    [InlineData("memory")]
    [InlineData("common-practice")]
    public void What_nobody_published_is_never_of_more_than_low_confidence(string source) => Assert.All(
        SeedFilesOnDisk.Tables.Values.SelectMany(rows => rows).Where(row => row.GetValueOrDefault("source_id") == source && row.ContainsKey("confidence")),
        row => Assert.Contains(row["confidence"], new[] { "low", "very-low" }));

    [Fact]
    public void Spot_checked_figures_are_those_printed() => Assert.All(Figures, figure =>
    {
        var where = figure["where"].Split(';', StringSplitOptions.TrimEntries).Select(w => w.Split('=')).ToList();
        var row = Assert.Single(SeedFilesOnDisk.Tables[figure["file"]], r => where.TrueForAll(w => r[w[0]] == w[1]));

        Assert.Equal(
            decimal.Parse(figure["printed"], CultureInfo.InvariantCulture),
            decimal.Parse(row[figure["column"]], CultureInfo.InvariantCulture));
    });

    [Fact]
    public void The_recipe_of_one_ounce_per_four_pounds_is_kept_to_two_decimals() =>
        Assert.Equal(Math.Round(100.0 / 16 / 4, 2), Seed.Catalogue.SaltRanges.Single(r => r.Id == "S02").LowPercent);
}
