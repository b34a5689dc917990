using RubLab.Contracts.Faults;

namespace RubLab.Contracts.Ingredients;

/// <summary>One amount converted, or why it was not.</summary>
/// <param name="Conversion">Absent where the item has faults.</param>
/// <param name="Errors">What is wrong with this item; absent where it was converted.</param>
public sealed record ConversionItemResponse(ConversionResponse? Conversion, IReadOnlyList<ErrorResponse>? Errors);
