using RubLab.Contracts.Ingredients;
using RubLab.Contracts.Json;

namespace RubLab.Client;

/// <summary>The densities the kitchen has weighed itself.</summary>
public sealed class DensitiesClient
{
    private const string List = "v1/densities";
    private readonly Wire _wire;

    internal DensitiesClient(Wire wire) => _wire = wire;

    /// <summary>All of them, page by page as they are read.</summary>
    /// <param name="pageSize">How many to ask for at a time, 1 to 200; the server's default if left out.</param>
    /// <param name="cancellation">Stops between and within pages.</param>
    public IAsyncEnumerable<OwnDensityResponse> ListAsync(int? pageSize = null, CancellationToken cancellation = default) =>
        Pages.ReadAsync(_wire, List, pageSize, Wire.Answers.ListResponseOwnDensityResponse, cancellation);

    /// <summary>One form's own density with the tag that weighing again and deleting ask for.</summary>
    public async Task<Tagged<OwnDensityResponse>> GetAsync(string ingredient, string form, CancellationToken cancellation = default)
    {
        using var answer = await _wire.SendAsync(new HttpRequestMessage(HttpMethod.Get, PathOf(ingredient, form)), cancellation).ConfigureAwait(false);
        return await Wire.ReadTaggedAsync(answer, Wire.Answers.OwnDensityResponse, cancellation).ConfigureAwait(false);
    }

    /// <summary>Weighs a form, in place of the reference's density everywhere in the kitchen.</summary>
    /// <param name="ingredient">Ingredient id.</param>
    /// <param name="form">Form id.</param>
    /// <param name="weighings">1 to 50 level fillings.</param>
    /// <param name="etag">The tag that was read, where the kitchen has weighed the form before; null for the first time.</param>
    /// <param name="cancellation">Stops it; whether it was stored is then not known.</param>
    public async Task<Tagged<OwnDensityResponse>> PutAsync(
        string ingredient, string form, OwnDensityRequest weighings, string? etag = null, CancellationToken cancellation = default)
    {
        var request = new HttpRequestMessage(HttpMethod.Put, PathOf(ingredient, form))
        {
            Content = Wire.Body(weighings, RubLabJson.Default.OwnDensityRequest),
        };
        if (etag is not null)
        {
            request.Headers.Add("If-Match", etag);
        }

        using var answer = await _wire.SendAsync(request, cancellation).ConfigureAwait(false);
        return await Wire.ReadTaggedAsync(answer, Wire.Answers.OwnDensityResponse, cancellation).ConfigureAwait(false);
    }

    /// <summary>Goes back to the reference's density, if nobody has weighed again since the tag was read.</summary>
    /// <param name="ingredient">Ingredient id.</param>
    /// <param name="form">Form id.</param>
    /// <param name="etag">The tag that was read; <c>*</c> for whatever is there.</param>
    /// <param name="cancellation">Stops it; whether it was deleted is then not known.</param>
    public async Task DeleteAsync(string ingredient, string form, string etag, CancellationToken cancellation = default)
    {
        var request = new HttpRequestMessage(HttpMethod.Delete, PathOf(ingredient, form));
        request.Headers.Add("If-Match", etag);
        using var answer = await _wire.SendAsync(request, cancellation).ConfigureAwait(false);
    }

    private static string PathOf(string ingredient, string form) => Paths.Of(Paths.Of(List, ingredient), form);
}
