using RubLab.Contracts.Faults;

namespace RubLab.Contracts.Ingredients;

/// <summary>One amount converted, or why it was not.</summary>
public sealed record ConversionItemResponse(ConversionResponse? Conversion, IReadOnlyList<ErrorResponse>? Errors);
