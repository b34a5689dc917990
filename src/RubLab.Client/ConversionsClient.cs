using System.Globalization;
using RubLab.Contracts.Ingredients;

namespace RubLab.Client;

/// <summary>Between mass and volume.</summary>
public sealed class ConversionsClient
{
    private const string Path = "v1/conversions";
    private readonly Wire _wire;

    internal ConversionsClient(Wire wire) => _wire = wire;

    /// <summary>One amount.</summary>
    /// <param name="ingredient">Ingredient id.</param>
    /// <param name="form">Form id; if null and the forms differ widely, the answer spans them and a finding asks.</param>
    /// <param name="value">How much.</param>
    /// <param name="unit">Of what: a symbol of mass or volume.</param>
    /// <param name="to">The symbol asked for.</param>
    /// <param name="cancellation">Stops it.</param>
    public Task<ConversionResponse> ConvertAsync(
        string ingredient, string? form, double value, string unit, string to, CancellationToken cancellation = default) => _wire.GetAsync(
            Paths.Query(
                Path, ("ingredient", ingredient), ("form", form), ("value", value.ToString("R", CultureInfo.InvariantCulture)), ("unit", unit), ("to", to)),
            Wire.Answers.ConversionResponse, cancellation);

    /// <summary>A whole card at once; each item of the answer is converted or has its own errors.</summary>
    public async Task<IReadOnlyList<ConversionItemResponse>> ConvertAsync(
        IReadOnlyList<ConversionItemRequest> items, CancellationToken cancellation = default) => (await _wire.PostAsync(
            Path, new ConversionsRequest { Items = items }, Contracts.Json.RubLabJson.Default.ConversionsRequest,
            Wire.Answers.ConversionsResponse, cancellation).ConfigureAwait(false)).Items;
}
