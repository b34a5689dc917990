using System.Diagnostics;
using System.Net.Sockets;
using System.Text;

namespace RubLab.Benchmarks.Http;

/// <summary>Posts one body over kept-open sockets as fast as answers come back.</summary>
internal static class LoadGenerator
{
    private static readonly byte[] LastChunk = "0\r\n\r\n"u8.ToArray();

    /// <summary>Answers per second over the given time.</summary>
    public static double Run(int port, string path, byte[] body, int connections, TimeSpan time)
    {
        var head = Encoding.ASCII.GetBytes(
            $"POST {path} HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nContent-Type: application/json\r\nContent-Length: {body.Length}\r\n\r\n");
        byte[] request = [.. head, .. body];
        var until = Stopwatch.GetTimestamp() + (long)(time.TotalSeconds * Stopwatch.Frequency);
        var clock = Stopwatch.StartNew();
        var workers = Enumerable.Range(0, connections).Select(_ => WorkAsync(port, request, until)).ToArray();
        Task.WaitAll(workers);
        return workers.Sum(w => w.Result) / clock.Elapsed.TotalSeconds;
    }

    private static async Task<long> WorkAsync(int port, byte[] request, long until)
    {
        using var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
        await socket.ConnectAsync("127.0.0.1", port);
        var buffer = new byte[1 << 20];
        long answers = 0;
        while (Stopwatch.GetTimestamp() < until)
        {
            await socket.SendAsync(request);
            await ReadAnswerAsync(socket, buffer);
            answers++;
        }

        return answers;
    }

    // Both routes answer in chunks; the answer is whole when the last chunk has come.
    private static async Task ReadAnswerAsync(Socket socket, byte[] buffer)
    {
        var filled = 0;
        while (true)
        {
            var read = await socket.ReceiveAsync(buffer.AsMemory(filled));
            filled += read;
            if (read == 0 || !buffer.AsSpan(0, 12).SequenceEqual("HTTP/1.1 200"u8))
            {
                throw new InvalidOperationException("No sound answer: " + Encoding.ASCII.GetString(buffer, 0, Math.Min(filled, 200)));
            }

            if (buffer.AsSpan(0, filled).EndsWith(LastChunk))
            {
                return;
            }
        }
    }
}
