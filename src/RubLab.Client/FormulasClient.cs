using System.Net;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Json;

namespace RubLab.Client;

/// <summary>The kitchen's formula library.</summary>
public sealed class FormulasClient
{
    private const string List = "v1/formulas";
    private readonly Wire _wire;

    internal FormulasClient(Wire wire) => _wire = wire;

    /// <summary>All of them by name, page by page as they are read.</summary>
    /// <param name="pageSize">How many to ask for at a time, 1 to 200; the server's default if left out.</param>
    /// <param name="cancellation">Stops between and within pages.</param>
    public IAsyncEnumerable<FormulaSummary> ListAsync(int? pageSize = null, CancellationToken cancellation = default) =>
        Pages.ReadAsync(_wire, List, pageSize, Wire.Answers.ListResponseFormulaSummary, cancellation);

    /// <summary>Stores a formula.</summary>
    /// <param name="formula">As a cook writes it.</param>
    /// <param name="idempotencyKey">Makes it safe to send again after a lost answer: sent twice, it is stored once.</param>
    /// <param name="cancellation">Stops it; whether it was stored is then not known.</param>
    public async Task<Tagged<FormulaResponse>> CreateAsync(
        FormulaRequest formula, string? idempotencyKey = null, CancellationToken cancellation = default)
    {
        var request = new HttpRequestMessage(HttpMethod.Post, List) { Content = Wire.Body(formula, RubLabJson.Default.FormulaRequest) };
        if (idempotencyKey is not null)
        {
            request.Headers.Add("Idempotency-Key", idempotencyKey);
        }

        using var answer = await _wire.SendAsync(request, cancellation).ConfigureAwait(false);
        return await Wire.ReadTaggedAsync(answer, Wire.Answers.FormulaResponse, cancellation).ConfigureAwait(false);
    }

    /// <summary>One formula with the tag that replacing and deleting ask for.</summary>
    public async Task<Tagged<FormulaResponse>> GetAsync(string id, CancellationToken cancellation = default)
    {
        using var answer = await _wire.SendAsync(new HttpRequestMessage(HttpMethod.Get, Paths.Of(List, id)), cancellation).ConfigureAwait(false);
        return await Wire.ReadTaggedAsync(answer, Wire.Answers.FormulaResponse, cancellation).ConfigureAwait(false);
    }

    /// <summary>One formula, or null while the version held still stands.</summary>
    /// <param name="id">Formula id.</param>
    /// <param name="heldETag">The tag of the version held.</param>
    /// <param name="cancellation">Stops it.</param>
    public async Task<Tagged<FormulaResponse>?> GetIfChangedAsync(string id, string heldETag, CancellationToken cancellation = default)
    {
        var request = new HttpRequestMessage(HttpMethod.Get, Paths.Of(List, id));
        request.Headers.Add("If-None-Match", heldETag);
        using var answer = await _wire.SendAsync(request, cancellation).ConfigureAwait(false);
        return answer.StatusCode == HttpStatusCode.NotModified
            ? null
            : await Wire.ReadTaggedAsync(answer, Wire.Answers.FormulaResponse, cancellation).ConfigureAwait(false);
    }

    /// <summary>Stores a new revision, if nobody else has since the tag was read.</summary>
    /// <param name="id">Formula id.</param>
    /// <param name="etag">The tag that was read; <c>*</c> for whatever is there.</param>
    /// <param name="formula">The whole formula.</param>
    /// <param name="cancellation">Stops it; whether it was stored is then not known.</param>
    public async Task<Tagged<FormulaResponse>> ReplaceAsync(
        string id, string etag, FormulaRequest formula, CancellationToken cancellation = default)
    {
        var request = new HttpRequestMessage(HttpMethod.Put, Paths.Of(List, id)) { Content = Wire.Body(formula, RubLabJson.Default.FormulaRequest) };
        request.Headers.Add("If-Match", etag);
        using var answer = await _wire.SendAsync(request, cancellation).ConfigureAwait(false);
        return await Wire.ReadTaggedAsync(answer, Wire.Answers.FormulaResponse, cancellation).ConfigureAwait(false);
    }

    /// <summary>Takes a formula out of the library, if nobody has changed it since the tag was read. Its revisions stay readable.</summary>
    /// <param name="id">Formula id.</param>
    /// <param name="etag">The tag that was read; <c>*</c> for whatever is there.</param>
    /// <param name="cancellation">Stops it; whether it was deleted is then not known.</param>
    public async Task DeleteAsync(string id, string etag, CancellationToken cancellation = default)
    {
        var request = new HttpRequestMessage(HttpMethod.Delete, Paths.Of(List, id));
        request.Headers.Add("If-Match", etag);
        using var answer = await _wire.SendAsync(request, cancellation).ConfigureAwait(false);
    }

    /// <summary>The revisions of a formula, oldest first.</summary>
    /// <param name="id">Formula id.</param>
    /// <param name="pageSize">How many to ask for at a time, 1 to 200; the server's default if left out.</param>
    /// <param name="cancellation">Stops between and within pages.</param>
    public IAsyncEnumerable<RevisionSummary> ListRevisionsAsync(string id, int? pageSize = null, CancellationToken cancellation = default) =>
        Pages.ReadAsync(_wire, Paths.Of(List, id) + "/revisions", pageSize, Wire.Answers.ListResponseRevisionSummary, cancellation);

    /// <summary>One revision; it never changes.</summary>
    public Task<FormulaResponse> GetRevisionAsync(string id, long revision, CancellationToken cancellation = default) =>
        _wire.GetAsync(Paths.Of(List, id) + "/revisions/" + Paths.Of(revision), Wire.Answers.FormulaResponse, cancellation);

    /// <summary>One line changed while the salt or the dose is held. Nothing is stored.</summary>
    public Task<FormulaChangeResponse> ChangeAsync(FormulaChangeRequest change, CancellationToken cancellation = default) => _wire.PostAsync(
        "v1/formula-changes", change, RubLabJson.Default.FormulaChangeRequest, Wire.Answers.FormulaChangeResponse, cancellation);
}
