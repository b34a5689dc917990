using System.Runtime.CompilerServices;
using RubLab.Contracts.Listing;

namespace RubLab.Client;

/// <summary>What changed in the kitchen.</summary>
public sealed class ChangesClient
{
    private readonly Wire _wire;

    internal ChangesClient(Wire wire) => _wire = wire;

    /// <summary>One page: at most 200 changes after a number, and the number to ask from next.</summary>
    public Task<ChangesResponse> GetAsync(long since = 0, CancellationToken cancellation = default) =>
        _wire.GetAsync(Paths.Query("v1/changes", ("since", Paths.Of(since))), Wire.Answers.ChangesResponse, cancellation);

    /// <summary>Every change after a number up to now, deletions included.</summary>
    public async IAsyncEnumerable<ChangeResponse> ListAsync(long since = 0, [EnumeratorCancellation] CancellationToken cancellation = default)
    {
        ChangesResponse page;
        do
        {
            page = await GetAsync(since, cancellation).ConfigureAwait(false);
            foreach (var change in page.Items)
            {
                yield return change;
            }

            since = page.Last;
        }
        while (page.Items.Count > 0);
    }
}
