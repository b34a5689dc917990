using System.Net;
using System.Net.Sockets;

namespace RubLab.Api.Tests.Hosting;

/// <summary>A port of this machine that passes everything on to another, until it is cut.</summary>
internal sealed class Relay : IDisposable
{
    private readonly DnsEndPoint _target;
    private readonly List<TcpClient> _open = [];
    private TcpListener? _listener;

    public Relay(string host, int port)
    {
        _target = new DnsEndPoint(host, port);
        Mend();
    }

    public int Port { get; private set; }

    /// <summary>Ends all connections and takes no more.</summary>
    public void Cut()
    {
        lock (_open)
        {
            _listener?.Dispose();
            _open.ForEach(client => client.Dispose());
            _open.Clear();
        }
    }

    /// <summary>Listens on its port again.</summary>
    public void Mend()
    {
        _listener = new TcpListener(IPAddress.Loopback, Port);
        _listener.Start();
        Port = ((IPEndPoint)_listener.LocalEndpoint).Port;
        _ = AcceptAsync(_listener);
    }

    public void Dispose() => Cut();

    private static async Task PassAsync(NetworkStream from, NetworkStream to)
    {
        try
        {
            await from.CopyToAsync(to);
        }
        catch (IOException)
        {
            // Cut.
        }

        to.Close();
    }

    private async Task AcceptAsync(TcpListener listener)
    {
        try
        {
            while (true)
            {
                var client = await listener.AcceptTcpClientAsync();
                var server = new TcpClient();
                await server.ConnectAsync(_target.Host, _target.Port);
                lock (_open)
                {
                    _open.AddRange([client, server]);
                }

                _ = PassAsync(client.GetStream(), server.GetStream());
                _ = PassAsync(server.GetStream(), client.GetStream());
            }
        }
        catch (Exception fault) when (fault is SocketException or ObjectDisposedException)
        {
            // Cut.
        }
    }
}
