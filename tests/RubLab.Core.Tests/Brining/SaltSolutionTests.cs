using RubLab.Core.Brining;
using RubLab.Core.Tests.Published;

namespace RubLab.Core.Tests.Brining;

public sealed class SaltSolutionTests
{
    private static readonly SaltSolution Solution = Seed.Catalogue.Brines.Solution;

    // The printed table has two misprints: its neighbours and its own definition contradict them.
    private static readonly Dictionary<string, double> Misprints = new() { ["salometer-2-percent"] = 0.528, ["salometer-31-percent"] = 8.182 };

    public static TheoryData<string> Printed => new(PublishedCase.Read("salometer.csv").Where(c => c.Id.EndsWith("-percent", StringComparison.Ordinal)).Select(c => c.Id));

    public static TheoryData<string> Gravities => new(PublishedCase.Read("salometer.csv").Where(c => c.Id.EndsWith("-gravity", StringComparison.Ordinal)).Select(c => c.Id));

    public static TheoryData<string> Densities => new(PublishedCase.Read("brines.csv").Where(c => c.Id.StartsWith("density-10c", StringComparison.Ordinal)).Select(c => c.Id));

    public static TheoryData<string> Solubilities => new(PublishedCase.Read("brines.csv").Where(c => c.Id.StartsWith("saturated", StringComparison.Ordinal)).Select(c => c.Id));

    [Theory]
    [MemberData(nameof(Printed))]
    public void The_salometer_is_the_printed_table_but_for_its_two_misprints(string id)
    {
        var row = Case("salometer.csv", id);
        var percent = Solution.PercentOf(row.Input("degrees"));
        if (Misprints.TryGetValue(id, out var right))
        {
            Assert.Equal(right, percent, 0.0005);
            Assert.True(Math.Abs(percent - row.Answer) > row.Tolerance, "Printed as it should be after all.");
        }
        else if (id == "salometer-60-percent")
        {
            // Read in a leaflet that prints 15.8, cut and not rounded.
            Assert.Equal(row.Answer, Math.Floor(percent * 10) / 10, 1e-9);
        }
        else
        {
            row.AssertIs(percent);
        }
    }

    [Fact]
    public void The_misprint_of_31_degrees_stands_out_between_its_neighbours()
    {
        // 28, 31 and 38 degrees: the rows run straight, and 8.162 lies 0.02 below the line where all others lie on it.
        double at28 = 7.391, printed = 8.162, at38 = 10.03;
        Assert.Equal(0.02, at28 + ((at38 - at28) * 3 / 10) - printed, 0.002);
    }

    [Theory]
    [MemberData(nameof(Gravities))]
    public void Specific_gravity_is_the_table_s(string id)
    {
        var row = Case("salometer.csv", id);
        row.AssertIs(Solution.SpecificGravity(Solution.PercentOf(row.Input("degrees"))));
    }

    [Theory]
    [MemberData(nameof(Densities))]
    public void The_column_headed_15_C_is_the_density_at_10_C(string id)
    {
        var row = Case("brines.csv", id);
        var at10 = Solution.DensityGramsPerMillilitre(row.Input("percent"), 10) * 1000;
        row.AssertIs(at10);
        var at15 = Solution.DensityGramsPerMillilitre(row.Input("percent"), 15) * 1000;
        Assert.True(Math.Abs(at10 - row.Answer) < Math.Abs(at15 - row.Answer), $"{id} fits 15 C better.");
    }

    [Fact]
    public void Grams_in_a_litre_are_the_printed_ones() => Assert.All(
        PublishedCase.Read("brines.csv").Where(c => c.Id.StartsWith("grams-per-litre", StringComparison.Ordinal)),
        row => row.AssertIs(row.Input("percent") * 10 * Solution.DensityGramsPerMillilitre(row.Input("percent"), 20)));

    [Theory]
    [MemberData(nameof(Solubilities))]
    public void Saturation_is_the_printed_grams_to_100_g_of_water(string id)
    {
        var row = Case("brines.csv", id);
        var percent = Solution.SaturatedPercent(row.Input("celsius"));
        row.AssertIs(percent / (100 - percent) * 100);
    }

    [Theory]
    [InlineData(10, 1.0732, 9.9)]
    [InlineData(26, 1.2007, 24.2)]
    public void Baume_is_145_less_145_over_the_gravity(double percent, double gravity, double baume)
    {
        Assert.Equal(gravity, Solution.SpecificGravity(percent), 0.0005);
        Assert.Equal(baume, Solution.Baume(percent), 0.06);
    }

    [Fact]
    public void Percent_and_degrees_go_there_and_back() => Law.Holds(CsCheck.Gen.Double[0, 100], 200, degrees =>
        Assert.Equal(degrees, Solution.SalometerOf(Solution.PercentOf(degrees)), 1e-10));

    [Fact]
    public void Density_rises_with_salt_and_falls_with_heat() => Law.Holds(
        CsCheck.Gen.Select(CsCheck.Gen.Double[0, 25.9], CsCheck.Gen.Double[0, 39]), 500, at =>
        {
            var (percent, celsius) = at;
            var here = Solution.DensityGramsPerMillilitre(percent, celsius);
            Assert.True(Solution.DensityGramsPerMillilitre(percent + 0.1, celsius) > here);
            Assert.True(Solution.DensityGramsPerMillilitre(percent, celsius + 1) < here);
        });

    [Theory]
    [InlineData(-0.1)]
    [InlineData(100.1)]
    [InlineData(double.NaN)]
    public void No_saturation_is_made_up_outside_the_table(double celsius) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Solution.SaturatedPercent(celsius));

    // A percent of salt weighs as much more above the table as between its last two rows.
    [Fact]
    public void Above_its_table_density_runs_on_as_it_did()
    {
        double At(double percent) => Solution.DensityGramsPerMillilitre(percent, 20);
        Assert.Equal((At(26) - At(25)) * 2, At(28) - At(26), 1e-12);
    }

    [Fact]
    public void Tables_out_of_order_or_of_one_row_are_refused()
    {
        SolutionDensity[] densities = [new(0, 998, 0.2), new(1, 1005, 0.2)];
        Solubility[] solubilities = [new(0, 26.3), new(10, 26.4)];
        Assert.Equal(26.35, new SaltSolution(densities, solubilities, 26.395).SaturatedPercent(5), 1e-12);

        Refused([densities[1], densities[0]], solubilities, 26.395);
        Refused([densities[0], densities[0]], solubilities, 26.395);
        Refused([densities[0]], solubilities, 26.395);
        Refused(densities, [solubilities[1], solubilities[0]], 26.395);
        Refused(densities, [solubilities[0]], 26.395);
        Refused(densities, solubilities, 0);

        static void Refused(SolutionDensity[] densities, Solubility[] solubilities, double full) =>
            Assert.Throws<ArgumentException>(() => new SaltSolution(densities, solubilities, full));
    }

    private static PublishedCase Case(string file, string id) => PublishedCase.Read(file).Single(c => c.Id == id);
}
