namespace RubLab.Contracts.Listing;

/// <summary>Changes in order. Ask again with <c>since</c> set to <c>last</c>.</summary>
/// <param name="Items">At most 200; empty when there is nothing new.</param>
/// <param name="Last">The number of the last item, or the number asked from.</param>
public sealed record ChangesResponse(IReadOnlyList<ChangeResponse> Items, long Last);
