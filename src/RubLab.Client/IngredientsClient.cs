using RubLab.Contracts.Reference;

namespace RubLab.Client;

/// <summary>The ingredients.</summary>
public sealed class IngredientsClient
{
    private const string List = "v1/ingredients";
    private readonly Wire _wire;

    internal IngredientsClient(Wire wire) => _wire = wire;

    /// <summary>All of them, page by page as they are read.</summary>
    /// <param name="pageSize">How many to ask for at a time, 1 to 200; the server's default if left out.</param>
    /// <param name="cancellation">Stops between and within pages.</param>
    public IAsyncEnumerable<IngredientSummary> ListAsync(int? pageSize = null, CancellationToken cancellation = default) =>
        Pages.ReadAsync(_wire, List, pageSize, Wire.Answers.ListResponseIngredientSummary, cancellation);

    /// <summary>One ingredient: composition, forms with their density bands, household measures.</summary>
    public Task<IngredientResponse> GetAsync(string id, CancellationToken cancellation = default) =>
        _wire.GetAsync(Paths.Of(List, id), Wire.Answers.IngredientResponse, cancellation);
}
