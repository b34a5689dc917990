using System.Net;

namespace RubLab.Client.Tests;

public sealed class FormulaTests(Kitchen kitchen) : IClassFixture<Kitchen>
{
    private readonly RubLabClient _client = kitchen.Client;

    [Fact]
    public async Task A_formula_is_stored_and_read_back_with_its_ratios()
    {
        var created = await _client.Formulas.CreateAsync(Requests.Rub());
        var read = await _client.Formulas.GetAsync(created.Value.Id);
        Assert.Equal(1, read.Value.Revision);
        Assert.Equal(created.ETag, read.ETag);
        Assert.Equal([8.8, 13.2], read.Value.Lines.Select(l => l.Ratio.Typical));
    }

    [Fact]
    public async Task An_unsound_formula_is_refused_with_every_fault()
    {
        var refused = await Refused.WithAsync(
            HttpStatusCode.UnprocessableEntity, () => _client.Formulas.CreateAsync(Requests.Rub() with { Name = " ", Kind = "dust", Dose = null }));
        Assert.Equal(["/dose", "/kind", "/name"], refused.Errors.Select(e => e.Pointer).Order());
    }

    [Fact]
    public async Task The_same_idempotency_key_stores_once_and_is_refused_for_another_formula()
    {
        var key = Guid.NewGuid().ToString();
        var first = await _client.Formulas.CreateAsync(Requests.Rub(), key);
        var again = await _client.Formulas.CreateAsync(Requests.Rub(), key);
        Assert.Equal((first.Value.Id, first.ETag), (again.Value.Id, again.ETag));

        var refused = await Refused.WithAsync(HttpStatusCode.UnprocessableEntity, () => _client.Formulas.CreateAsync(Requests.Rub(20), key));
        Assert.Equal("idempotency-key-reused", Assert.Single(refused.Errors).Code);
    }

    [Fact]
    public async Task A_bad_idempotency_key_is_refused_with_400() =>
        await Refused.WithAsync(HttpStatusCode.BadRequest, () => _client.Formulas.CreateAsync(Requests.Rub(), new string('k', 201)));

    [Fact]
    public async Task Replacing_makes_a_revision_and_leaves_the_old_one_readable()
    {
        var created = await _client.Formulas.CreateAsync(Requests.Rub());
        var id = created.Value.Id;
        var replaced = await _client.Formulas.ReplaceAsync(id, created.ETag, Requests.Rub(20, "Lockside light rub"));
        Assert.Equal(2, replaced.Value.Revision);
        Assert.NotEqual(created.ETag, replaced.ETag);
        Assert.Equal(22, (await _client.Formulas.GetRevisionAsync(id, 1)).Dose!.Value.Value);
        var revisions = await _client.Formulas.ListRevisionsAsync(id, 1).ToListAsync();
        Assert.Equal([(1L, "Lockside pork rub"), (2L, "Lockside light rub")], revisions.Select(r => (r.Revision, r.Name)));
    }

    [Fact]
    public async Task A_stale_tag_neither_replaces_nor_deletes()
    {
        var created = await _client.Formulas.CreateAsync(Requests.Rub());
        var id = created.Value.Id;
        await _client.Formulas.ReplaceAsync(id, created.ETag, Requests.Rub(20));
        await Refused.WithAsync(HttpStatusCode.PreconditionFailed, () => _client.Formulas.ReplaceAsync(id, created.ETag, Requests.Rub(18)));
        await Refused.WithAsync(HttpStatusCode.PreconditionFailed, () => _client.Formulas.DeleteAsync(id, created.ETag));
        Assert.Equal(20, (await _client.Formulas.GetAsync(id)).Value.Dose!.Value.Value);
    }

    [Fact]
    public async Task A_deleted_formula_is_gone_but_for_its_revisions()
    {
        var created = await _client.Formulas.CreateAsync(Requests.Rub());
        var id = created.Value.Id;
        await _client.Formulas.DeleteAsync(id, "*");
        await Refused.WithAsync(HttpStatusCode.NotFound, () => _client.Formulas.GetAsync(id));
        await Refused.WithAsync(HttpStatusCode.NotFound, () => _client.Formulas.DeleteAsync(id, created.ETag));
        Assert.Equal(id, (await _client.Formulas.GetRevisionAsync(id, 1)).Id);
    }

    [Fact]
    public async Task An_unchanged_formula_is_not_sent_again()
    {
        var created = await _client.Formulas.CreateAsync(Requests.Rub());
        var id = created.Value.Id;
        Assert.Null(await _client.Formulas.GetIfChangedAsync(id, created.ETag));
        var replaced = await _client.Formulas.ReplaceAsync(id, created.ETag, Requests.Rub(20));
        Assert.Equal(replaced.ETag, (await _client.Formulas.GetIfChangedAsync(id, created.ETag))!.ETag);
    }

    [Fact]
    public async Task The_list_follows_its_cursors_over_every_formula()
    {
        using var own = new Kitchen();
        for (var i = 0; i < 5; i++)
        {
            await own.Client.Formulas.CreateAsync(Requests.Rub(name: $"Évening rub {i} / ∞"));
        }

        var small = await own.Client.Formulas.ListAsync(2).ToListAsync();
        Assert.Equal(await own.Client.Formulas.ListAsync().ToListAsync(), small);
        Assert.Equal(25, small.Count);
    }

    [Fact]
    public async Task What_is_not_there_is_refused_with_404()
    {
        await Refused.WithAsync(HttpStatusCode.NotFound, () => _client.Formulas.GetAsync("lost-rub"));
        await Refused.WithAsync(HttpStatusCode.NotFound, () => _client.Formulas.ReplaceAsync("lost-rub", "*", Requests.Rub()));
        await Refused.WithAsync(HttpStatusCode.NotFound, () => _client.Formulas.GetRevisionAsync("lockside-pork-rub", 99));
        await Refused.WithAsync(HttpStatusCode.NotFound, () => _client.Formulas.ListRevisionsAsync("lost-rub").ToListAsync().AsTask());
    }

    [Fact]
    public async Task Changes_tell_of_storing_replacing_and_deleting_in_order()
    {
        using var own = new Kitchen();
        var before = (await own.Client.Changes.ListAsync().LastAsync()).Number;
        var created = await own.Client.Formulas.CreateAsync(Requests.Rub());
        var replaced = await own.Client.Formulas.ReplaceAsync(created.Value.Id, created.ETag, Requests.Rub(20));
        await own.Client.Formulas.DeleteAsync(created.Value.Id, replaced.ETag);

        var changes = await own.Client.Changes.ListAsync(before).ToListAsync();
        Assert.Equal([(before + 1, 1L, "put"), (before + 2, 2L, "put"), (before + 3, 2L, "deleted")], changes.Select(c => (c.Number, c.Revision, c.Action)));
        Assert.Equal(before + 3, (await own.Client.Changes.GetAsync(before + 2)).Last);
    }

    [Fact]
    public async Task Changes_since_no_number_are_refused() =>
        await Refused.WithAsync(HttpStatusCode.UnprocessableEntity, () => _client.Changes.GetAsync(-1));
}
