using RubLab.Contracts.Json;
using RubLab.Contracts.Pairing;

namespace RubLab.Client;

/// <summary>Paired devices.</summary>
/// <remarks>
/// A session's token is a cookie, which the handler of the <see cref="HttpClient"/> keeps. With it, whatever is not a GET needs the
/// default header <c>Origin</c> with the server's own address; a key needs none, and is the better way for programs.
/// </remarks>
public sealed class SessionsClient
{
    private const string List = "v1/sessions";
    private const string Current = List + "/current";
    private readonly Wire _wire;

    internal SessionsClient(Wire wire) => _wire = wire;

    /// <summary>Pairs this program with a code; needs no key. A code that opens nothing is refused with 422, too many tries with 429.</summary>
    /// <param name="code">As it was shown; small letters, spaces and hyphens do not matter.</param>
    /// <param name="name">What to call this device.</param>
    /// <param name="cancellation">Stops it; whether the code is used up is then not known.</param>
    public Task<SessionResponse> PairAsync(string code, string? name = null, CancellationToken cancellation = default) => _wire.PostAsync(
        List, new SessionRequest { Code = code, Name = name }, RubLabJson.Default.SessionRequest, Wire.Answers.SessionResponse, cancellation);

    /// <summary>The paired devices, oldest first, page by page as they are read. Needs the scope pair.</summary>
    /// <param name="pageSize">How many to ask for at a time, 1 to 200; the server's default if left out.</param>
    /// <param name="cancellation">Stops between and within pages.</param>
    public IAsyncEnumerable<SessionResponse> ListAsync(int? pageSize = null, CancellationToken cancellation = default) =>
        Pages.ReadAsync(_wire, List, pageSize, Wire.Answers.ListResponseSessionResponse, cancellation);

    /// <summary>The session this program is paired by; refused with 404 where it comes with a key or needs none, with 401 where it is not paired.</summary>
    public Task<SessionResponse> GetCurrentAsync(CancellationToken cancellation = default) =>
        _wire.GetAsync(Current, Wire.Answers.SessionResponse, cancellation);

    /// <summary>Unpairs a device, at once. Needs the scope pair.</summary>
    public async Task EndAsync(string id, CancellationToken cancellation = default)
    {
        using var answer = await _wire.SendAsync(new HttpRequestMessage(HttpMethod.Delete, Paths.Of(List, id)), cancellation).ConfigureAwait(false);
    }

    /// <summary>Unpairs this program.</summary>
    public async Task SignOutAsync(CancellationToken cancellation = default)
    {
        using var answer = await _wire.SendAsync(new HttpRequestMessage(HttpMethod.Delete, Current), cancellation).ConfigureAwait(false);
    }
}
