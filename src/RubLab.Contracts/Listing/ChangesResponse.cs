namespace RubLab.Contracts.Listing;

/// <summary>Changes in order. Ask again with <c>since</c> set to <c>last</c>.</summary>
public sealed record ChangesResponse(IReadOnlyList<ChangeResponse> Items, long Last);
