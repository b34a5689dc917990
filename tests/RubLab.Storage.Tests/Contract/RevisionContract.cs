using System.Data.Common;
using RubLab.Storage.Formulas;

namespace RubLab.Storage.Tests.Contract;

public abstract class RevisionContract<TFresh> : StoreContract<TFresh>
    where TFresh : FreshDatabase, new()
{
    [ContractFact]
    public async Task Every_write_leaves_a_revision_as_it_was_then()
    {
        var first = Clock.GetUtcNow();
        await CreateAsync("rub-1", Draft("One", "rub", "[1]"));
        var second = Clock.Advance(TimeSpan.FromHours(2));
        await ReplaceAsync("rub-1", 1, Draft("Two", "mop", "[2]"));

        Assert.Equal(
            [new FormulaRevision("rub-1", 1, "One", "rub", "[1]", first), new FormulaRevision("rub-1", 2, "Two", "mop", "[2]", second)],
            await RevisionsAsync("rub-1"));
        Assert.Equal("One", (await RevisionAsync("rub-1", 1))!.Name);
    }

    [ContractFact]
    public async Task Revisions_come_in_pages()
    {
        await CreateAsync("rub-1");
        for (var revision = 1; revision < 7; revision++)
        {
            await ReplaceAsync("rub-1", revision, Draft($"Number {revision + 1}"));
        }

        Assert.Equal([1, 2, 3], (await RevisionsAsync("rub-1", 3)).Select(revision => revision.Revision));
        Assert.Equal([4, 5, 6], (await RevisionsAsync("rub-1", 3, 3)).Select(revision => revision.Revision));
        Assert.Equal([7], (await RevisionsAsync("rub-1", 3, 6)).Select(revision => revision.Revision));
        Assert.Empty(await RevisionsAsync("rub-1", 3, 7));
    }

    [ContractFact]
    public async Task The_revisions_of_a_deleted_formula_stay_readable()
    {
        await CreateAsync("rub-1", Draft("Kept"));
        await DeleteAsync("rub-1", 1);

        Assert.Equal("Kept", (await RevisionAsync("rub-1", 1))!.Name);
        Assert.Single(await RevisionsAsync("rub-1"));
    }

    [ContractFact]
    public async Task Revisions_that_never_were_are_null_and_lists_of_them_empty()
    {
        await CreateAsync("rub-1");

        Assert.Null(await RevisionAsync("rub-1", 0));
        Assert.Null(await RevisionAsync("rub-1", 2));
        Assert.Null(await RevisionAsync("nothing", 1));
        Assert.Empty(await RevisionsAsync("nothing"));
    }

    [ContractFact]
    public async Task A_kitchen_does_not_see_the_revisions_of_another()
    {
        await CreateAsync("rub-1");

        Assert.Empty(await RevisionsAsync("rub-1", kitchen: Lock));
        Assert.Null(await ReadAsync(work => work.Formulas.GetRevisionAsync(Lock, "rub-1", 1)));
    }

    [ContractFact]
    public async Task The_engine_itself_refuses_to_change_a_revision()
    {
        await CreateAsync("rub-1", Draft("Carved in stone"));

        await Assert.ThrowsAnyAsync<DbException>(() => Fresh.ExecuteAsync("UPDATE formula_revisions SET name = 'Chiselled'"));

        Assert.Equal("Carved in stone", (await RevisionAsync("rub-1", 1))!.Name);
    }

    [ContractFact]
    public async Task The_engine_itself_refuses_to_delete_a_revision()
    {
        await CreateAsync("rub-1");

        await Assert.ThrowsAnyAsync<DbException>(() => Fresh.ExecuteAsync("DELETE FROM formula_revisions"));

        Assert.Single(await RevisionsAsync("rub-1"));
    }

    private Task<FormulaRevision?> RevisionAsync(string id, long revision) =>
        ReadAsync(work => work.Formulas.GetRevisionAsync(Quay, id, revision));
}
