using RubLab.Contracts.Json;
using RubLab.Contracts.Yields;

namespace RubLab.Client;

/// <summary>The cooking yields the kitchen has recorded itself.</summary>
public sealed class YieldsClient
{
    private const string List = "v1/yields";
    private readonly Wire _wire;

    internal YieldsClient(Wire wire) => _wire = wire;

    /// <summary>All of them, page by page as they are read.</summary>
    /// <param name="pageSize">How many to ask for at a time, 1 to 200; the server's default if left out.</param>
    /// <param name="cancellation">Stops between and within pages.</param>
    public IAsyncEnumerable<OwnYieldResponse> ListAsync(int? pageSize = null, CancellationToken cancellation = default) =>
        Pages.ReadAsync(_wire, List, pageSize, Wire.Answers.ListResponseOwnYieldResponse, cancellation);

    /// <summary>One cut's own yields with the tag that recording more and deleting ask for.</summary>
    public async Task<Tagged<OwnYieldResponse>> GetAsync(string cut, CancellationToken cancellation = default)
    {
        using var answer = await _wire.SendAsync(new HttpRequestMessage(HttpMethod.Get, PathOf(cut)), cancellation).ConfigureAwait(false);
        return await Wire.ReadTaggedAsync(answer, Wire.Answers.OwnYieldResponse, cancellation).ConfigureAwait(false);
    }

    /// <summary>Records cooks of a cut, in place of the reference's yield everywhere in the kitchen.</summary>
    /// <param name="cut">Cut id.</param>
    /// <param name="records">1 to 200 cooks: all of them, those recorded before too.</param>
    /// <param name="etag">The tag that was read, where the kitchen has recorded the cut before; null for the first time.</param>
    /// <param name="cancellation">Stops it; whether it was stored is then not known.</param>
    public async Task<Tagged<OwnYieldResponse>> PutAsync(
        string cut, OwnYieldRequest records, string? etag = null, CancellationToken cancellation = default)
    {
        var request = new HttpRequestMessage(HttpMethod.Put, PathOf(cut))
        {
            Content = Wire.Body(records, RubLabJson.Default.OwnYieldRequest),
        };
        if (etag is not null)
        {
            request.Headers.Add("If-Match", etag);
        }

        using var answer = await _wire.SendAsync(request, cancellation).ConfigureAwait(false);
        return await Wire.ReadTaggedAsync(answer, Wire.Answers.OwnYieldResponse, cancellation).ConfigureAwait(false);
    }

    /// <summary>Goes back to the reference's yield, if nobody has recorded more since the tag was read.</summary>
    /// <param name="cut">Cut id.</param>
    /// <param name="etag">The tag that was read; <c>*</c> for whatever is there.</param>
    /// <param name="cancellation">Stops it; whether it was deleted is then not known.</param>
    public async Task DeleteAsync(string cut, string etag, CancellationToken cancellation = default)
    {
        var request = new HttpRequestMessage(HttpMethod.Delete, PathOf(cut));
        request.Headers.Add("If-Match", etag);
        using var answer = await _wire.SendAsync(request, cancellation).ConfigureAwait(false);
    }

    private static string PathOf(string cut) => Paths.Of(List, cut);
}
