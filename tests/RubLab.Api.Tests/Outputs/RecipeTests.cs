using System.Net;
using System.Text.Json.Nodes;
using RubLab.Api.Tests.Hosting;

namespace RubLab.Api.Tests.Outputs;

public sealed class RecipeTests(Server server) : IClassFixture<Server>
{
    private static readonly (string, string) AsRecipe = ("Accept", "application/ld+json");

    [Fact]
    public async Task A_formula_and_each_revision_of_it_come_as_a_recipe()
    {
        var path = await CreateAsync();
        var first = (await server.GetAsync(path, AsRecipe)).Succeeded();
        (await server.PutAsync(path, Bodies.Formula.Replace("\"value\":22", "\"value\":20", StringComparison.Ordinal), ("If-Match", "*"))).Succeeded();
        var latest = (await server.GetAsync(path, AsRecipe)).Succeeded();

        Assert.Equal("application/ld+json", latest.MediaType);
        Assert.Equal(("Recipe", 2, "For 1 kg of green meat: 20 g"), ((string)latest.Json["@type"]!, (int)latest.Json["version"]!, (string)latest.Json["recipeYield"]!));
        Assert.Equal(path.Split('/')[^1], (string)latest.Json["identifier"]!);
        Assert.True(JsonNode.DeepEquals(first.Json, (await server.GetAsync(path + "/revisions/1", AsRecipe)).Succeeded().Json));
    }

    [Fact]
    public async Task Each_representation_has_a_tag_of_its_own()
    {
        var path = await CreateAsync();
        var json = (await server.GetAsync(path)).Succeeded();
        var recipe = (await server.GetAsync(path, AsRecipe)).Succeeded();

        Assert.NotEqual(json.Tag, recipe.Tag);
        Assert.Matches("^\"[!#-~]+\"$", recipe.Tag!);
        Assert.Contains("Accept", recipe.Header("Vary")!, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotModified, (await server.GetAsync(path, AsRecipe, ("If-None-Match", recipe.Tag!))).Status);
        Assert.Equal(HttpStatusCode.OK, (await server.GetAsync(path, AsRecipe, ("If-None-Match", json.Tag!))).Status);
        Assert.Equal(HttpStatusCode.OK, (await server.GetAsync(path, ("If-None-Match", recipe.Tag!))).Status);
    }

    [Fact]
    public async Task Whoever_read_the_recipe_may_say_which_revision_they_mean()
    {
        var path = await CreateAsync();
        var tag = (await server.GetAsync(path, AsRecipe)).Succeeded().Tag!;

        (await server.PutAsync(path, Bodies.Formula, ("If-Match", tag))).Succeeded();
        await server.RefusedAsync(await server.PutAsync(path, Bodies.Formula, ("If-Match", tag)), HttpStatusCode.PreconditionFailed);
    }

    [Fact]
    public async Task A_formula_that_is_not_there_is_not_found_as_a_recipe_either() =>
        await server.RefusedAsync(await server.GetAsync("/v1/formulas/none", AsRecipe), HttpStatusCode.NotFound);

    private async Task<string> CreateAsync() =>
        (await server.PostAsync("/v1/formulas", Bodies.Formula)).Succeeded(HttpStatusCode.Created).Header("Location")!;
}
