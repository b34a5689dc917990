using RubLab.Storage;
using RubLab.Storage.Pairing;
using RubLab.Storage.Refusals;

namespace RubLab.Api.Callers;

/// <summary>Finds the paired device a request comes from, and keeps it paired while it is used.</summary>
public sealed class Devices(Database database, TimeProvider clock)
{
    public async Task<DeviceSession?> FindAsync(SessionCookie cookie, CancellationToken cancellation)
    {
        await using var work = await database.BeginAsync(Intent.Read, cancellation);
        return await work.DeviceSessions.FindAsync(cookie.Token, cancellation);
    }

    /// <summary>Once an hour at most: notes that it was seen, and sets its cookie anew.</summary>
    public async Task RenewAsync(HttpContext http, SessionCookie cookie, DeviceSession session)
    {
        if (clock.GetUtcNow() - session.LastUsedAt < DeviceSessionStore.RenewedAfter)
        {
            return;
        }

        try
        {
            await using var work = await database.BeginAsync(Intent.Write, http.RequestAborted);
            if (!await work.DeviceSessions.RenewAsync(session.KitchenId, session.Id, http.RequestAborted))
            {
                return;
            }

            await work.CommitAsync(http.RequestAborted);
        }
        catch (StorageException)
        {
            // What was asked for may need no writing; the next request renews it.
            return;
        }

        cookie.Give(http.Response);
    }
}
