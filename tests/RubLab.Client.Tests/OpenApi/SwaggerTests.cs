using System.Text.RegularExpressions;

namespace RubLab.Client.Tests.OpenApi;

public sealed partial class SwaggerTests(ServedDocument document) : IClassFixture<ServedDocument>
{
    [Fact]
    public async Task The_explorer_loads_with_every_asset_it_names()
    {
        var http = document.Kitchen.Http;
        var page = await http.GetStringAsync("/swagger/index.html");
        var assets = Asset().Matches(page).Select(m => m.Groups[1].Value).Distinct().ToList();
        Assert.Contains("./swagger-ui-bundle.js", assets);
        Assert.All(assets, asset => Assert.True(http.GetByteArrayAsync("/swagger/" + asset).Result.Length > 100, asset));
        Assert.True((await http.GetByteArrayAsync("/swagger/swagger-ui-bundle.js")).Length > 500_000);
        Assert.True((await http.GetByteArrayAsync("/swagger/swagger-ui.css")).Length > 50_000);
    }

    [Fact]
    public async Task The_explorer_reads_the_description() =>
        Assert.Contains("/openapi/v1.json", await document.Kitchen.Http.GetStringAsync("/swagger/index.js"), StringComparison.Ordinal);

    [Fact]
    public async Task The_bare_path_leads_to_the_page() =>
        Assert.Contains("swagger-ui", await document.Kitchen.Http.GetStringAsync("/swagger"), StringComparison.Ordinal);

    [GeneratedRegex("(?:src|href)=\"(\\./?[^\"]+|[^\"/:]+\\.(?:js|css|png))\"")]
    private static partial Regex Asset();
}
