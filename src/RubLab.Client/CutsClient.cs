using RubLab.Contracts.Reference;

namespace RubLab.Client;

/// <summary>The cuts of meat.</summary>
public sealed class CutsClient
{
    private const string List = "v1/cuts";
    private readonly Wire _wire;

    internal CutsClient(Wire wire) => _wire = wire;

    /// <summary>All of them, page by page as they are read.</summary>
    /// <param name="pageSize">How many to ask for at a time, 1 to 200; the server's default if left out.</param>
    /// <param name="cancellation">Stops between and within pages.</param>
    public IAsyncEnumerable<CutSummary> ListAsync(int? pageSize = null, CancellationToken cancellation = default) =>
        Pages.ReadAsync(_wire, List, pageSize, Wire.Answers.ListResponseCutSummary, cancellation);

    /// <summary>One cut: natural sodium, trim, cook yields and salt kept in cooking.</summary>
    public Task<CutResponse> GetAsync(string id, CancellationToken cancellation = default) =>
        _wire.GetAsync(Paths.Of(List, id), Wire.Answers.CutResponse, cancellation);
}
