namespace RubLab.Contracts.Ingredients;

/// <summary>The items in the order sent.</summary>
public sealed record ConversionsResponse(IReadOnlyList<ConversionItemResponse> Items);
