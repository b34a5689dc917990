using System.Globalization;

namespace RubLab.Core.Tests.Ingredients;

public sealed class SieveTests
{
    [Fact]
    public void Every_sieve_has_the_opening_of_its_standard()
    {
        var printed = PlainCsv.Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Published", "sieves.csv")))
            .Select(row => (Number(row["us_mesh"]), Number(row["opening_um"])));

        Assert.Equal(printed, Seed.Catalogue.Sieves.Select(s => ((double)s.UsMesh, s.OpeningMicrometres)));
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
