using RubLab.Storage.Kitchens;
using RubLab.Storage.OwnNumbers;

namespace RubLab.Storage.Tests.Contract;

public abstract class YieldContract<TFresh>() : OwnNumberContract<TFresh, CutKey>(
    "yield", "yield_revisions", new CutKey("beef-brisket"), "beef-brisket",
    others: [new("pork-loin"), new("lamb-leg")],
    ordered: [new("Z"), new("a"), new("a-a"), new("aa"), new("é")])
    where TFresh : FreshDatabase, new()
{
    protected override OwnNumberStore<CutKey> Store(UnitOfWork work) => work.Yields;

    protected override long RevisionOf(Kitchen kitchen) => kitchen.YieldRevision;
}
