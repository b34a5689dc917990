using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace RubLab.Api.Tests.Hosting;

/// <summary>A test that needs an address of this machine other than loopback.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class OtherAddressFactAttribute : FactAttribute
{
    public OtherAddressFactAttribute()
    {
        if (Address is null)
        {
            Skip = "This machine has no IPv4 address other than loopback.";
        }
    }

    public static IPAddress? Address { get; } = NetworkInterface.GetAllNetworkInterfaces()
        .Where(n => n.OperationalStatus == OperationalStatus.Up)
        .SelectMany(n => n.GetIPProperties().UnicastAddresses)
        .Select(a => a.Address)
        .FirstOrDefault(a => a.AddressFamily == AddressFamily.InterNetwork && !IPAddress.IsLoopback(a));
}
