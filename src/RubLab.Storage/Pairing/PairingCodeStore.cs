using System.Security.Cryptography;
using System.Text;
using RubLab.Storage.Engines;
using RubLab.Storage.Keys;

namespace RubLab.Storage.Pairing;

/// <summary>Short codes that pair one device each, kept only as hashes that the caller makes.</summary>
/// <remarks>All of them together bear <see cref="MostWrongTries"/> wrong tries; then every one of them, of all kitchens, is void.</remarks>
public sealed class PairingCodeStore
{
    /// <summary>How many codes a kitchen has open at most; a further one takes the place of the oldest.</summary>
    public const int MostOpen = 5;

    /// <summary>The wrong try with this number makes all open codes void.</summary>
    public const int MostWrongTries = 10;

    /// <summary>How long a code is good for: time enough to walk to the stove with it.</summary>
    public static readonly TimeSpan Life = TimeSpan.FromMinutes(5);

    private readonly Session _session;

    internal PairingCodeStore(Session session)
    {
        _session = session;
    }

    /// <summary>Opens a code of that hash.</summary>
    /// <param name="kitchenId">The kitchen it opens.</param>
    /// <param name="hash">Stands for the code.</param>
    /// <param name="scopes">What the device may do.</param>
    /// <param name="deviceName">What the device is to be called; null to leave that to it.</param>
    /// <param name="cancellation">Stops the query.</param>
    public async Task<OpenCode> IssueAsync(
        string kitchenId, string hash, IReadOnlyCollection<string> scopes, string? deviceName, CancellationToken cancellation = default)
    {
        ArgumentException.ThrowIfNullOrEmpty(hash);
        var text = Scopes.Join(scopes);
        await _session.WriteAsync(PairingCodeSql.TakeTurn, null, cancellation);
        await _session.WriteAsync(PairingCodeSql.DeleteExpired, new { _session.Now }, cancellation);
        await _session.WriteAsync(PairingCodeSql.DeleteOldest, new { kitchenId, kept = MostOpen - 1 }, cancellation);
        await _session.WriteAsync(PairingCodeSql.ForgetTriesOfNone, null, cancellation);
        var expiresAt = Timestamp.Write(Timestamp.Read(_session.Now) + Life);
        var row = await _session.WriteReturningAsync<PairingCodeRow>(
            PairingCodeSql.Insert,
            new { kitchenId, id = Guid.CreateVersion7().ToString("n"), hash, scopes = text, deviceName, _session.Now, expiresAt },
            cancellation);
        return row!.ToCode();
    }

    /// <summary>Uses up the code of that hash; null if none is open, and a wrong try is then counted.</summary>
    /// <remarks>Commit in both cases, or the try is not counted.</remarks>
    public async Task<OpenCode?> RedeemAsync(string hash, CancellationToken cancellation = default)
    {
        ArgumentException.ThrowIfNullOrEmpty(hash);
        await _session.WriteAsync(PairingCodeSql.TakeTurn, null, cancellation);
        await _session.WriteAsync(PairingCodeSql.DeleteExpired, new { _session.Now }, cancellation);
        var open = await _session.ListAsync<PairingCodeRow, PairingCodeRow>(PairingCodeSql.All, new { }, row => row, cancellation);
        if (Find(open, hash) is { } found)
        {
            await _session.WriteAsync(PairingCodeSql.Delete, new { found.KitchenId, found.Id }, cancellation);
            return found.ToCode();
        }

        await _session.WriteAsync(PairingCodeSql.CountWrongTry, null, cancellation);
        await _session.WriteAsync(PairingCodeSql.DeleteAllWhenTriedTooOften, new { most = MostWrongTries }, cancellation);
        await _session.WriteAsync(PairingCodeSql.ForgetTriesOfNone, null, cancellation);
        return null;
    }

    // All are compared, and each to its end: how long it takes tells nothing about any of them.
    private static PairingCodeRow? Find(IReadOnlyList<PairingCodeRow> open, string hash)
    {
        var wanted = Encoding.ASCII.GetBytes(hash);
        PairingCodeRow? found = null;
        foreach (var row in open)
        {
            if (CryptographicOperations.FixedTimeEquals(wanted, Encoding.ASCII.GetBytes(row.Hash)))
            {
                found = row;
            }
        }

        return found;
    }
}
