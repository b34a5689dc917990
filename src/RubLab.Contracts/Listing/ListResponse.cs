namespace RubLab.Contracts.Listing;

/// <summary>One page of a list.</summary>
/// <param name="Items">The items.</param>
/// <param name="Next">The cursor of the next page; absent on the last.</param>
public sealed record ListResponse<T>(IReadOnlyList<T> Items, string? Next);
