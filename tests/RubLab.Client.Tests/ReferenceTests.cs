using System.Net;

namespace RubLab.Client.Tests;

public sealed class ReferenceTests(Kitchen kitchen) : IClassFixture<Kitchen>
{
    private readonly RubLabClient _client = kitchen.Client;

    [Fact]
    public async Task Units_come_with_their_exact_factor()
    {
        var units = await _client.Units.ListAsync();
        Assert.Equal(453.59237, units.Single(u => u.Symbol == "lb").Factor);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(null)]
    public async Task A_list_is_the_same_whatever_the_page_size(int? pageSize)
    {
        var whole = await _client.Cuts.ListAsync(200).ToListAsync();
        Assert.Equal(whole, await _client.Cuts.ListAsync(pageSize).ToListAsync());
        Assert.Contains(whole, c => c.Id == "pork-shoulder");
    }

    [Fact]
    public async Task Every_ingredient_and_source_listed_can_be_read()
    {
        await foreach (var ingredient in _client.Ingredients.ListAsync())
        {
            Assert.Equal(ingredient.Forms, (await _client.Ingredients.GetAsync(ingredient.Id)).Forms.Select(f => f.Id));
        }

        await foreach (var source in _client.Sources.ListAsync(10))
        {
            Assert.Equal(source, await _client.Sources.GetAsync(source.Id));
        }
    }

    [Fact]
    public async Task An_ingredient_says_what_a_piece_of_it_weighs()
    {
        var garlic = await _client.Ingredients.GetAsync("garlic-raw");
        Assert.Equal(3, garlic.PieceMeasures.Single(m => m.Measure == "clove").Weight.Value);
    }

    [Fact]
    public async Task A_cut_has_its_figures_with_their_sources()
    {
        var cut = await _client.Cuts.GetAsync("pork-shoulder");
        Assert.Equal("pork", cut.Species);
        Assert.Equal("usda-sr28", cut.Sodium!.SourceId);
    }

    [Fact]
    public async Task What_is_not_there_is_refused_with_404()
    {
        await Refused.WithAsync(HttpStatusCode.NotFound, () => _client.Cuts.GetAsync("unicorn-saddle"));
        await Refused.WithAsync(HttpStatusCode.NotFound, () => _client.Ingredients.GetAsync("stardust"));
        await Refused.WithAsync(HttpStatusCode.NotFound, () => _client.Sources.GetAsync("hearsay"));
    }

    [Fact]
    public async Task A_page_size_out_of_range_is_refused_with_its_pointer()
    {
        var refused = await Refused.WithAsync(HttpStatusCode.UnprocessableEntity, () => _client.Cuts.ListAsync(201).ToListAsync().AsTask());
        Assert.Equal(("/limit", "out-of-range"), (Assert.Single(refused.Errors).Pointer, refused.Errors[0].Code));
    }

    [Fact]
    public async Task Health_names_the_edition_of_the_data()
    {
        var health = await _client.Health.GetAsync();
        Assert.Equal(("ok", Repository.Read("seed-data", "VERSION").Trim()), (health.Status, health.DataVersion));
    }
}
