using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Hosting.Server;
using RubLab.Api.Hosting;

namespace RubLab.Api.Callers;

/// <summary>What this server asks for: whether a request from this machine may go without a key, and the key of its configuration.</summary>
/// <remarks>A key in the configuration, or an address that other machines reach, ends keyless access altogether: a proxy on
/// this machine that adds no header would otherwise open the kitchen to whoever it serves.</remarks>
public sealed class Keys(HostSettings settings, IServer server)
{
    private readonly byte[]? _configured = settings.Key is { } key ? Hash(key) : null;
    private readonly Lazy<bool> _isLocal = new(() => Exposure.IsLoopbackOnly(server));

    public bool MayBeKeyless => _configured is null && _isLocal.Value;

    /// <summary>Whether this is the key of the configuration. It is never stored, so changing it retires it.</summary>
    public bool IsConfigured(string key) => _configured is not null && CryptographicOperations.FixedTimeEquals(_configured, Hash(key));

    private static byte[] Hash(string key) => SHA256.HashData(Encoding.UTF8.GetBytes(key));
}
