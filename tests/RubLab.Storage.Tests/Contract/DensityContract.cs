using RubLab.Storage.Kitchens;
using RubLab.Storage.OwnNumbers;

namespace RubLab.Storage.Tests.Contract;

public abstract class DensityContract<TFresh>() : OwnNumberContract<TFresh, FormKey>(
    "density", "density_revisions", new FormKey("salt", "table"), "salt/table",
    others: [new("salt", "flake"), new("sugar", "table")],
    ordered: [new("Z", "a"), new("a", "B"), new("a", "a"), new("a", "a-b"), new("a", "ab"), new("a-a", "a"), new("aa", "a"), new("é", "a")])
    where TFresh : FreshDatabase, new()
{
    protected override OwnNumberStore<FormKey> Store(UnitOfWork work) => work.Densities;

    protected override long RevisionOf(Kitchen kitchen) => kitchen.DensityRevision;
}
