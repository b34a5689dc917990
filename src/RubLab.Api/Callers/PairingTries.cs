using System.Net;
using System.Net.Sockets;

namespace RubLab.Api.Callers;

/// <summary>How often codes may be tried: so many times in a window from one address, and from all together.</summary>
/// <remarks>
/// In this process alone. What protects the codes themselves is in the store: a few wrong tries from anywhere make them void. This keeps
/// one address from doing that at once, and everybody from keeping the server busy with hashing.
/// </remarks>
public sealed class PairingTries(TimeProvider clock)
{
    public const int PerAddress = 5;
    public const int OfAll = 100;

    public static readonly TimeSpan Window = TimeSpan.FromMinutes(5);

    private const int PrefixBytes = 8;

    private readonly Lock _lock = new();
    private readonly Dictionary<IPAddress, int> _tries = [];
    private DateTimeOffset _ends;
    private int _all;

    /// <summary>Counts a try before it is made, so that many at once are all counted; else says how long to wait.</summary>
    /// <returns>Null if it may be made.</returns>
    public TimeSpan? Take(IPAddress? from)
    {
        var address = Network(from);
        lock (_lock)
        {
            var now = clock.GetUtcNow();
            if (now >= _ends || now < _ends - Window)
            {
                _tries.Clear();
                (_all, _ends) = (0, now + Window);
            }

            var tries = _tries.GetValueOrDefault(address);
            if (tries >= PerAddress || _all >= OfAll)
            {
                return _ends - now;
            }

            _tries[address] = tries + 1;
            _all++;
            return null;
        }
    }

    /// <summary>Gives back a try that was right.</summary>
    public void GiveBack(IPAddress? from)
    {
        var address = Network(from);
        lock (_lock)
        {
            // Unless the window has ended since.
            if (_tries.GetValueOrDefault(address) is > 0 and var tries)
            {
                _tries[address] = tries - 1;
                _all--;
            }
        }
    }

    // Whoever has one IPv6 address has the whole 64-bit network around it.
    private static IPAddress Network(IPAddress? address)
    {
        if (address is null)
        {
            return IPAddress.None;
        }

        if (address.IsIPv4MappedToIPv6)
        {
            return address.MapToIPv4();
        }

        if (address.AddressFamily != AddressFamily.InterNetworkV6)
        {
            return address;
        }

        var bytes = address.GetAddressBytes();
        bytes.AsSpan(PrefixBytes).Clear();
        return new IPAddress(bytes);
    }
}
