namespace RubLab.Contracts.Ingredients;

/// <summary>Amounts to convert, at most 1,000.</summary>
public sealed record ConversionsRequest
{
    /// <summary>In the order the answer will have.</summary>
    public IReadOnlyList<ConversionItemRequest?>? Items { get; init; }
}
