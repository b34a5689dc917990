using RubLab.Core.Tests.Catalogues;

namespace RubLab.Core.Tests.Timing;

public sealed class SaltingReferenceTests
{
    [Fact]
    public void Every_species_that_is_sold_has_one_band() => Assert.All(
        Seed.Catalogue.Cuts.Select(c => c.Species).Distinct(),
        species =>
        {
            var row = Assert.Single(Seed.Catalogue.Salting.Diffusivities, d => d.IsDefault && d.Species == species);
            Assert.NotNull(row.TemperatureCelsius);
            Assert.True(Seed.Catalogue.Salting.TryFindDiffusivity(species, out var found));
            Assert.Same(row, found);
        });

    [Fact]
    public void A_species_without_a_band_has_none() => Assert.False(Seed.Catalogue.Salting.TryFindDiffusivity("caiman", out _));

    [Fact]
    public void Every_band_taken_is_inside_the_limits() => Assert.All(Seed.Catalogue.Salting.Diffusivities.Where(d => d.IsDefault), row =>
    {
        var limits = Seed.Catalogue.Salting.Limits;
        Assert.InRange(row.SquareMetresPerSecond.Low, limits.LowestDiffusivitySquareMetresPerSecond, row.SquareMetresPerSecond.Typical);
        Assert.InRange(row.SquareMetresPerSecond.High, row.SquareMetresPerSecond.Typical, limits.HighestDiffusivitySquareMetresPerSecond);
    });

    [Fact]
    public void The_band_of_beef_ends_where_its_study_does()
    {
        var rows = Seed.Catalogue.Salting.Diffusivities.ToDictionary(d => d.Id);

        Assert.Equal(rows["beef-brine-10"].SquareMetresPerSecond.Low, rows["beef-cold"].SquareMetresPerSecond.Low);
        Assert.Equal(rows["beef-bed-10"].SquareMetresPerSecond.High, rows["beef-cold"].SquareMetresPerSecond.High);
        Assert.Equal(rows["pork-slices"].SquareMetresPerSecond.Low, rows["pork-cold"].SquareMetresPerSecond.Low);
        Assert.Equal(rows["meat-whole"].SquareMetresPerSecond.High, rows["pork-cold"].SquareMetresPerSecond.High);
        Assert.Equal(Math.Sqrt(25e-12 * 1721e-12), rows["beef-cold"].SquareMetresPerSecond.Typical, 1e-15);
    }

    // 1.48 to 1.61e-9 at 25 C and 8.1 to 8.8e-10 at 5 C, as the reference figures give free water.
    [Fact]
    public void Free_water_at_two_temperatures_has_its_ratio() =>
        Assert.Equal(1.48e-9 / 8.1e-10, Seed.Catalogue.Salting.Speeding(25, 5), 0.02);

    [Fact]
    public void Salt_is_faster_the_warmer_and_nothing_is_known_outside_the_table()
    {
        for (var celsius = 1.0; celsius <= 100; celsius++)
        {
            Assert.InRange(Seed.Catalogue.Salting.Speeding(celsius, celsius - 1), 1.01, 1.05);
        }

        Assert.Equal(1, Seed.Catalogue.Salting.Speeding(37, 37));
        Assert.Throws<ArgumentOutOfRangeException>(() => Seed.Catalogue.Salting.Speeding(-1, 5));
        Assert.Equal("celsius", Assert.Throws<ArgumentOutOfRangeException>(() => Seed.Catalogue.Salting.Speeding(5, 101)).ParamName);
        Assert.Throws<ArgumentOutOfRangeException>(() => Seed.Catalogue.Salting.Speeding(double.NaN, 5));
    }

    [Fact]
    public void The_viscosities_cover_the_temperatures_that_are_computed()
    {
        var viscosities = Seed.Catalogue.Salting.Viscosities;
        var limits = Seed.Catalogue.Salting.Limits;

        Assert.Equal(viscosities.OrderBy(v => v.TemperatureCelsius), viscosities);
        Assert.Equal(viscosities.OrderByDescending(v => v.MillipascalSeconds), viscosities);
        Assert.InRange(limits.LowestTemperatureCelsius, viscosities[0].TemperatureCelsius, viscosities[^1].TemperatureCelsius);
        Assert.InRange(limits.HighestTemperatureCelsius, viscosities[0].TemperatureCelsius, viscosities[^1].TemperatureCelsius);
    }

    [Theory]
    [InlineData("pork-cold,pork,true,pork,brine,5,162,", "pork-cold,pork,true,pork,brine,5,362,", "diffusivities.csv line 2: diffusivity_low_um2_per_s is not the low end of a band above zero.")]
    [InlineData("pork-cold,pork,true,pork,brine,5,162,", "pork-cold,pork,true,pork,brine,5,0,", "diffusivities.csv line 2: diffusivity_low_um2_per_s is not the low end of a band above zero.")]
    [InlineData("pork-cold,pork,true,pork,brine,5,162,", "pork-cold,pork,true,pork,brine,,162,", "diffusivities.csv line 2: temperature_c is blank in a row that is a default.")]
    public void A_wrong_band_is_named_where_it_stands(string was, string becomes, string fault) => Assert.Equal(
        fault, Assert.Throws<InvalidDataException>(() => Reading.Of(Reading.With("diffusivities.csv", was, becomes))).Message);

    [Fact]
    public void A_limit_that_is_missing_is_named() => Assert.Equal(
        "constants.csv has no soak-water-ratio-lowest.",
        Assert.Throws<InvalidDataException>(() => Reading.Of(Reading.With("constants.csv", "soak-water-ratio-lowest,", "soak-ratio-lowest,"))).Message);
}
