using RubLab.Storage.Formulas;

namespace RubLab.Storage.Tests.Contract;

public abstract class FormulaListContract<TFresh> : StoreContract<TFresh>
    where TFresh : FreshDatabase, new()
{
    [ContractFact]
    public async Task A_list_is_ordered_by_name_without_regard_to_case_then_by_id()
    {
        await CreateAsync("5", Draft("banana"));
        await CreateAsync("4", Draft("Apple"));
        await CreateAsync("3", Draft("BANANA"));
        await CreateAsync("2", Draft("apple"));
        await CreateAsync("1", Draft("Cherry"));

        Assert.Equal(["2", "4", "3", "5", "1"], (await ListAsync()).Select(formula => formula.Id));
    }

    [ContractFact]
    public async Task Case_is_disregarded_beyond_ascii_too()
    {
        await CreateAsync("2", Draft("ÉCLADE"));
        await CreateAsync("1", Draft("éclade"));
        await CreateAsync("3", Draft("Éclade b"));
        await CreateAsync("5", Draft("шашлык"));
        await CreateAsync("4", Draft("ШАШЛЫК"));

        Assert.Equal(["1", "2", "3", "4", "5"], (await ListAsync()).Select(formula => formula.Id));
    }

    [ContractFact]
    public async Task Pages_cover_everything_once_in_order()
    {
        var names = Enumerable.Range(0, 23).Select(i => i % 2 == 0 ? $"Rub {i % 7}" : $"rub {i % 7}").ToList();
        for (var i = 0; i < names.Count; i++)
        {
            await CreateAsync($"id-{i:00}", Draft(names[i]));
        }

        var paged = await PageThroughAsync(4);

        Assert.Equal(names.Count, paged.Count);
        Assert.Equal((await ListAsync()).Select(formula => formula.Id), paged.Select(formula => formula.Id));
    }

    [ContractFact]
    public async Task Inserts_and_deletions_between_pages_neither_repeat_nor_skip_what_was_there()
    {
        for (var i = 0; i < 10; i++)
        {
            await CreateAsync($"old-{i}", Draft($"M{i}"));
        }

        // Each round adds a name at the end, so the list would never run out: seven pages of three cover it.
        var seen = new List<string>();
        FormulaPosition? after = null;
        for (var round = 0; round < 7; round++)
        {
            var page = await ListAsync(3, after);
            seen.AddRange(page.Select(formula => formula.Id));
            var last = page[^1];
            after = new FormulaPosition(last.Name, last.Id);
            await CreateAsync($"before-{round}", Draft($"A{round}"));
            await CreateAsync($"after-{round}", Draft($"N{round}"));
            await DeleteAsync(last.Id, last.Revision);
        }

        Assert.Equal(seen.Count, seen.Distinct().Count());
        Assert.Equal(Enumerable.Range(0, 10).Select(i => $"old-{i}"), seen.Where(id => id.StartsWith("old", StringComparison.Ordinal)));
        Assert.DoesNotContain(seen, id => id.StartsWith("before", StringComparison.Ordinal));
    }

    [ContractFact]
    public async Task Paging_while_others_write_still_gives_all_that_was_there()
    {
        for (var i = 0; i < 40; i++)
        {
            await CreateAsync($"old-{i:00}", Draft($"Name {i:00}"));
        }

        var writer = Task.Run(async () =>
        {
            for (var i = 0; i < 40; i++)
            {
                await CreateAsync($"new-{i:00}", Draft($"name {39 - i:00}"));
            }
        });
        var seen = (await PageThroughAsync(3)).Select(formula => formula.Id).ToList();
        await writer;

        Assert.Equal(seen.Count, seen.Distinct().Count());
        Assert.Equal(40, seen.Count(id => id.StartsWith("old", StringComparison.Ordinal)));
    }

    [ContractFact]
    public async Task A_list_of_one_kind_leaves_out_the_others_on_every_page()
    {
        for (var i = 0; i < 9; i++)
        {
            await CreateAsync($"id-{i}", Draft($"Name {i}", i % 3 == 0 ? "mop" : "rub"));
        }

        var first = await ListAsync(2, kind: "mop");
        var second = await ListAsync(2, new FormulaPosition(first[^1].Name, first[^1].Id), "mop");

        Assert.Equal(["id-0", "id-3"], first.Select(formula => formula.Id));
        Assert.Equal(["id-6"], second.Select(formula => formula.Id));
        Assert.Empty(await ListAsync(kind: "sauce"));
    }

    [ContractFact]
    public async Task A_page_may_start_after_a_name_that_no_longer_exists()
    {
        await CreateAsync("1", Draft("Alder"));
        await CreateAsync("2", Draft("Birch"));

        Assert.Equal(["2"], (await ListAsync(after: new FormulaPosition("ALDERWOOD", "x"))).Select(formula => formula.Id));
        Assert.Empty(await ListAsync(after: new FormulaPosition("Zebrano", "")));
    }

    [ContractFact]
    public async Task A_renamed_formula_moves_in_the_list()
    {
        await CreateAsync("1", Draft("Alder"));
        await CreateAsync("2", Draft("Birch"));

        await ReplaceAsync("1", 1, Draft("cedar"));

        Assert.Equal(["2", "1"], (await ListAsync()).Select(formula => formula.Id));
    }

    [ContractFact]
    public async Task A_limit_below_one_is_refused()
    {
        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => ListAsync(0));
        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => RevisionsAsync("1", 0));
        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => ChangesAsync(0, -1));
    }

    private async Task<List<StoredFormula>> PageThroughAsync(int limit)
    {
        var all = new List<StoredFormula>();
        FormulaPosition? after = null;
        while (true)
        {
            var page = await ListAsync(limit, after);
            if (page.Count == 0)
            {
                return all;
            }

            all.AddRange(page);
            after = new FormulaPosition(page[^1].Name, page[^1].Id);
        }
    }
}
