using RubLab.Storage.Engines;
using RubLab.Storage.Keys;

namespace RubLab.Storage.Pairing;

/// <summary>Paired devices, each tied to one kitchen, their tokens kept only as hashes.</summary>
public sealed class DeviceSessionStore
{
    /// <summary>How long a device stays paired without being used: a smoker may rest for a winter month or two.</summary>
    public static readonly TimeSpan Life = TimeSpan.FromDays(90);

    /// <summary>A device in use is renewed this seldom, so that reading hardly ever writes.</summary>
    public static readonly TimeSpan RenewedAfter = TimeSpan.FromHours(1);

    private readonly Session _session;

    internal DeviceSessionStore(Session session)
    {
        _session = session;
    }

    /// <summary>Pairs a device; its token is in the answer and nowhere else. Devices whose time is over are forgotten.</summary>
    public async Task<StartedSession> StartAsync(
        string kitchenId, string name, IReadOnlyCollection<string> scopes, CancellationToken cancellation = default)
    {
        ArgumentException.ThrowIfNullOrEmpty(name);
        var plainToken = PlainKey.Draw(PlainKey.TokenPrefix);
        await _session.WriteAsync(DeviceSessionSql.DeleteExpired, new { _session.Now }, cancellation);
        var row = await _session.WriteReturningAsync<DeviceSessionRow>(
            DeviceSessionSql.Insert,
            new
            {
                kitchenId,
                id = Guid.CreateVersion7().ToString("n"),
                name,
                hash = PlainKey.Hash(plainToken),
                scopes = Scopes.Join(scopes),
                _session.Now,
                expiresAt = ExpiresAt(),
            },
            cancellation);
        return new StartedSession(row!.ToSession(), plainToken);
    }

    /// <summary>The device of that token; null if it was never paired, is unpaired or was not used for too long.</summary>
    public async Task<DeviceSession?> FindAsync(string plainToken, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plainToken);
        var row = await _session.FirstAsync<DeviceSessionRow>(
            DeviceSessionSql.Find, new { hash = PlainKey.Hash(plainToken), _session.Now }, cancellation);
        return row?.ToSession();
    }

    /// <summary>Notes that a device is in use, and gives it its whole life again; false if it is no longer paired.</summary>
    public async Task<bool> RenewAsync(string kitchenId, string id, CancellationToken cancellation = default) =>
        await _session.WriteAsync(DeviceSessionSql.Renew, new { kitchenId, id, _session.Now, expiresAt = ExpiresAt() }, cancellation) == 1;

    /// <summary>The devices of a kitchen that are paired now, oldest first.</summary>
    /// <param name="kitchenId">Whose devices.</param>
    /// <param name="limit">At most so many; at least 1.</param>
    /// <param name="after">Where the page before ended; null for the first.</param>
    /// <param name="cancellation">Stops the query.</param>
    public Task<IReadOnlyList<DeviceSession>> ListAsync(
        string kitchenId, int limit, DevicePosition? after = null, CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(limit, 1);
        return _session.ListAsync<DeviceSessionRow, DeviceSession>(
            DeviceSessionSql.List(after is not null),
            new { kitchenId, createdAt = after is null ? null : Timestamp.Write(after.CreatedAt), id = after?.Id, limit, _session.Now },
            row => row.ToSession(),
            cancellation);
    }

    /// <summary>True if this call unpaired it; false if there is no such device.</summary>
    public async Task<bool> EndAsync(string kitchenId, string id, CancellationToken cancellation = default) =>
        await _session.WriteAsync(DeviceSessionSql.Delete, new { kitchenId, id }, cancellation) == 1;

    private string ExpiresAt() => Timestamp.Write(Timestamp.Read(_session.Now) + Life);
}
