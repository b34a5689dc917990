using RubLab.Storage.Changes;
using RubLab.Storage.Engines;
using RubLab.Storage.Formulas;
using RubLab.Storage.Keys;
using RubLab.Storage.Kitchens;
using RubLab.Storage.OwnNumbers;
using RubLab.Storage.Pairing;
using RubLab.Storage.Replays;
using RubLab.Storage.Secrets;

namespace RubLab.Storage;

/// <summary>Work that is kept whole or not at all: the stores never commit, and disposal without <see cref="CommitAsync"/> takes everything back.</summary>
/// <remarks>For one flow of control at a time.</remarks>
public sealed class UnitOfWork : IAsyncDisposable
{
    private readonly Session _session;

    internal UnitOfWork(Session session)
    {
        _session = session;
    }

    public KitchenStore Kitchens => field ??= new KitchenStore(_session);

    public KeyStore Keys => field ??= new KeyStore(_session);

    public FormulaStore Formulas => field ??= new FormulaStore(_session, Changes);

    public OwnNumberStore<FormKey> Densities => field ??= new OwnNumberStore<FormKey>(OwnNumberTable.Densities, _session, Changes);

    public OwnNumberStore<CutKey> Yields => field ??= new OwnNumberStore<CutKey>(OwnNumberTable.Yields, _session, Changes);

    public ChangeStore Changes => field ??= new ChangeStore(_session);

    public ReplayStore Replays => field ??= new ReplayStore(_session);

    public PairingCodeStore PairingCodes => field ??= new PairingCodeStore(_session);

    public DeviceSessionStore DeviceSessions => field ??= new DeviceSessionStore(_session);

    public SecretStore Secrets => field ??= new SecretStore(_session);

    /// <summary>Keeps everything written; the unit is over afterwards.</summary>
    public Task CommitAsync(CancellationToken cancellation = default) => _session.CommitAsync(cancellation);

    public ValueTask DisposeAsync() => _session.DisposeAsync();
}
