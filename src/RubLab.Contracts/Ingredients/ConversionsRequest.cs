namespace RubLab.Contracts.Ingredients;

/// <summary>Amounts to convert, at most 1,000.</summary>
public sealed record ConversionsRequest
{
    public IReadOnlyList<ConversionItemRequest?>? Items { get; init; }
}
