using RubLab.Contracts.Reference;

namespace RubLab.Client;

/// <summary>The sources that stand beside the numbers.</summary>
public sealed class SourcesClient
{
    private const string List = "v1/sources";
    private readonly Wire _wire;

    internal SourcesClient(Wire wire) => _wire = wire;

    /// <summary>All of them, page by page as they are read.</summary>
    /// <param name="pageSize">How many to ask for at a time, 1 to 200; the server's default if left out.</param>
    /// <param name="cancellation">Stops between and within pages.</param>
    public IAsyncEnumerable<SourceResponse> ListAsync(int? pageSize = null, CancellationToken cancellation = default) =>
        Pages.ReadAsync(_wire, List, pageSize, Wire.Answers.ListResponseSourceResponse, cancellation);

    /// <summary>One source.</summary>
    public Task<SourceResponse> GetAsync(string id, CancellationToken cancellation = default) =>
        _wire.GetAsync(Paths.Of(List, id), Wire.Answers.SourceResponse, cancellation);
}
