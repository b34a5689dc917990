using System.Security.Cryptography;
using RubLab.Storage.Engines;

namespace RubLab.Storage.Secrets;

/// <summary>Random secrets of the installation, drawn once and shared by every process on the database.</summary>
public sealed class SecretStore
{
    private readonly Session _session;

    internal SecretStore(Session session)
    {
        _session = session;
    }

    /// <summary>The secret of that name, drawn now if there is none; one that exists is given whatever its length.</summary>
    /// <param name="name">What it is for.</param>
    /// <param name="bytes">How many random bytes a new one has; at least 16.</param>
    /// <param name="cancellation">Stops the query.</param>
    public async Task<byte[]> GetOrCreateAsync(string name, int bytes, CancellationToken cancellation = default)
    {
        ArgumentException.ThrowIfNullOrEmpty(name);
        ArgumentOutOfRangeException.ThrowIfLessThan(bytes, 16);
        await _session.WriteAsync(
            "INSERT INTO secrets (name, value, created_at) VALUES (@name, @value, @Now) ON CONFLICT (name) DO NOTHING",
            new { name, value = Convert.ToBase64String(RandomNumberGenerator.GetBytes(bytes)), _session.Now },
            cancellation);

        // Read back: where two drew at once, both must use what was kept.
        var row = await _session.FirstAsync<SecretRow>("SELECT value AS Value FROM secrets WHERE name = @name", new { name }, cancellation);
        return Convert.FromBase64String(row!.Value);
    }
}
