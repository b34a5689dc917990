using RubLab.Storage.Formulas;

namespace RubLab.Storage.Tests.Contract;

public abstract class FormulaWriteContract<TFresh> : StoreContract<TFresh>
    where TFresh : FreshDatabase, new()
{
    [ContractFact]
    public async Task A_created_formula_reads_back_as_revision_one()
    {
        var written = await CreateAsync("rub-1", Draft("Lockside rub", "rub", """{"dose":22}"""));

        Assert.Equal(WriteOutcome.Written, written.Outcome);
        var now = Clock.GetUtcNow();
        Assert.Equal(new StoredFormula("rub-1", 1, "Lockside rub", "rub", """{"dose":22}""", now, now), written.Formula);
        Assert.Equal(written.Formula, await GetAsync("rub-1"));
    }

    [ContractFact]
    public async Task A_formula_with_a_taken_id_is_not_created_and_changes_nothing()
    {
        var first = await CreateAsync("rub-1", Draft("First"));

        var second = await CreateAsync("rub-1", Draft("Second"));

        Assert.Equal(WriteOutcome.Taken, second.Outcome);
        Assert.Equal(1, second.CurrentRevision);
        Assert.False(second.IsWritten);
        Assert.Equal(first.Formula, await GetAsync("rub-1"));
        Assert.Single(await ChangesAsync());
    }

    [ContractFact]
    public async Task An_unknown_formula_is_null()
    {
        Assert.Null(await GetAsync("nothing"));
    }

    [ContractFact]
    public async Task A_replaced_formula_goes_up_one_revision_and_keeps_its_creation_time()
    {
        var created = Clock.GetUtcNow();
        await CreateAsync("rub-1");
        var updated = Clock.Advance(TimeSpan.FromMinutes(5));

        var written = await ReplaceAsync("rub-1", 1, Draft("Renamed", "mop", "[1]"));

        Assert.Equal(new StoredFormula("rub-1", 2, "Renamed", "mop", "[1]", created, updated), written.Formula);
        Assert.Equal(written.Formula, await GetAsync("rub-1"));
    }

    [ContractFact]
    public async Task A_replace_with_a_stale_revision_changes_nothing()
    {
        await CreateAsync("rub-1");
        var current = await ReplaceAsync("rub-1", 1, Draft("Second"));

        var late = await ReplaceAsync("rub-1", 1, Draft("Late"));

        Assert.Equal(WriteOutcome.Stale, late.Outcome);
        Assert.Equal(2, late.CurrentRevision);
        Assert.Equal(current.Formula, await GetAsync("rub-1"));
        Assert.Equal(2, (await RevisionsAsync("rub-1")).Count);
        Assert.Equal(2, (await ChangesAsync()).Count);
    }

    [ContractFact]
    public async Task A_replace_with_a_revision_not_yet_reached_is_stale()
    {
        await CreateAsync("rub-1");

        var early = await ReplaceAsync("rub-1", 2, Draft("Early"));

        Assert.Equal(WriteOutcome.Stale, early.Outcome);
        Assert.Equal(1, early.CurrentRevision);
    }

    [ContractFact]
    public async Task A_formula_that_does_not_exist_cannot_be_replaced_or_deleted()
    {
        var replaced = await ReplaceAsync("nothing", 1, Draft());
        var deleted = await DeleteAsync("nothing", 1);

        Assert.Equal(WriteOutcome.Missing, replaced.Outcome);
        Assert.Null(replaced.CurrentRevision);
        Assert.Equal(WriteOutcome.Missing, deleted.Outcome);
        Assert.Empty(await ChangesAsync());
    }

    [ContractFact]
    public async Task A_deleted_formula_is_gone_from_reads_and_lists()
    {
        await CreateAsync("rub-1", Draft("Farewell"));

        var deleted = await DeleteAsync("rub-1", 1);

        Assert.Equal(WriteOutcome.Written, deleted.Outcome);
        Assert.Equal("Farewell", deleted.Formula!.Name);
        Assert.Equal(1, deleted.CurrentRevision);
        Assert.Null(await GetAsync("rub-1"));
        Assert.Empty(await ListAsync());
    }

    [ContractFact]
    public async Task A_delete_with_a_stale_revision_deletes_nothing()
    {
        await CreateAsync("rub-1");
        var current = await ReplaceAsync("rub-1", 1, Draft("Second"));

        var late = await DeleteAsync("rub-1", 1);

        Assert.Equal(WriteOutcome.Stale, late.Outcome);
        Assert.Equal(2, late.CurrentRevision);
        Assert.Equal(current.Formula, await GetAsync("rub-1"));
    }

    [ContractFact]
    public async Task A_deleted_formula_can_be_neither_replaced_nor_deleted_again()
    {
        await CreateAsync("rub-1");
        await DeleteAsync("rub-1", 1);

        Assert.Equal(WriteOutcome.Missing, (await ReplaceAsync("rub-1", 1, Draft())).Outcome);
        Assert.Equal(WriteOutcome.Missing, (await DeleteAsync("rub-1", 1)).Outcome);
    }

    [ContractFact]
    public async Task A_deleted_id_used_again_goes_on_with_its_numbering()
    {
        await CreateAsync("rub-1", Draft("First life"));
        await ReplaceAsync("rub-1", 1, Draft("First life, better"));
        await DeleteAsync("rub-1", 2);
        var reborn = Clock.Advance(TimeSpan.FromDays(1));

        var written = await CreateAsync("rub-1", Draft("Second life", "mop", "[2]"));

        Assert.Equal(new StoredFormula("rub-1", 3, "Second life", "mop", "[2]", reborn, reborn), written.Formula);
        Assert.Equal([1, 2, 3], (await RevisionsAsync("rub-1")).Select(revision => revision.Revision));
        Assert.Equal(WriteOutcome.Stale, (await ReplaceAsync("rub-1", 2, Draft("From the first life"))).Outcome);
    }

    [ContractFact]
    public async Task Two_kitchens_may_use_the_same_id_without_seeing_each_other()
    {
        await CreateAsync("rub-1", Draft("Of the quay"));
        await CreateAsync("rub-1", Draft("Of the lock"), Lock);
        await ReplaceAsync("rub-1", 1, Draft("Of the quay, again"));

        await DeleteAsync("rub-1", 1, Lock);

        Assert.Equal("Of the quay, again", (await GetAsync("rub-1"))!.Name);
        Assert.Null(await GetAsync("rub-1", Lock));
        Assert.Equal(2, (await RevisionsAsync("rub-1")).Count);
        Assert.Single(await RevisionsAsync("rub-1", kitchen: Lock));
        Assert.Single(await ListAsync());
        Assert.Empty(await ListAsync(kitchen: Lock));
    }

    [ContractFact]
    public async Task A_kitchen_cannot_replace_or_delete_the_formula_of_another()
    {
        var created = await CreateAsync("rub-1");

        Assert.Equal(WriteOutcome.Missing, (await ReplaceAsync("rub-1", 1, Draft("Theirs"), Lock)).Outcome);
        Assert.Equal(WriteOutcome.Missing, (await DeleteAsync("rub-1", 1, Lock)).Outcome);
        Assert.Equal(created.Formula, await GetAsync("rub-1"));
    }

    [ContractFact]
    public async Task Unicode_names_and_documents_come_back_as_they_were()
    {
        const string Name = "Ñandú 🔥🧂 – “Fuego” шашлык 烤肉 e\u0301 'quoted' \"double\"";
        const string Document = """{"note":"👩🏽‍🍳 \u00e9 \\ ; DROP TABLE formulas; --"}""";

        await CreateAsync("rub-🌶", Draft(Name, "rub", Document));

        var formula = await GetAsync("rub-🌶");
        Assert.Equal(Name, formula!.Name);
        Assert.Equal(Document, formula.Document);
        Assert.Equal(Name, Assert.Single(await ListAsync()).Name);
    }

    [ContractFact]
    public async Task A_document_of_one_megabyte_comes_back_to_the_letter()
    {
        var document = string.Concat(Enumerable.Range(0, 120_000).Select(i => (char)('a' + (i % 26)) + "é€ 🔥"));
        Assert.InRange(System.Text.Encoding.UTF8.GetByteCount(document), 1_000_000, 2_000_000);

        await CreateAsync("big", Draft(document: document));

        Assert.Equal(document, (await GetAsync("big"))!.Document);
        Assert.Equal(document, Assert.Single(await RevisionsAsync("big")).Document);
    }

    [ContractFact]
    public async Task A_formula_of_a_kitchen_that_does_not_exist_is_an_error()
    {
        await Assert.ThrowsAnyAsync<System.Data.Common.DbException>(() => CreateAsync("rub-1", Draft(), "nowhere"));
    }
}
