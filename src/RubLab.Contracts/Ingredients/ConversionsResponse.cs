namespace RubLab.Contracts.Ingredients;

/// <summary>The items in the order sent.</summary>
/// <param name="Items">One for each item sent.</param>
public sealed record ConversionsResponse(IReadOnlyList<ConversionItemResponse> Items);
