using System.Runtime.CompilerServices;
using System.Text.Json.Serialization.Metadata;
using RubLab.Contracts.Listing;

namespace RubLab.Client;

/// <summary>Follows the cursors of a list.</summary>
internal static class Pages
{
    public static async IAsyncEnumerable<T> ReadAsync<T>(
        Wire wire, string path, int? pageSize, JsonTypeInfo<ListResponse<T>> type, [EnumeratorCancellation] CancellationToken cancellation)
    {
        string? cursor = null;
        do
        {
            var page = await wire.GetAsync(
                Paths.Query(path, ("limit", pageSize is { } size ? Paths.Of(size) : null), ("cursor", cursor)), type, cancellation).ConfigureAwait(false);
            foreach (var item in page.Items)
            {
                yield return item;
            }

            cursor = page.Next;
        }
        while (cursor is not null);
    }
}
