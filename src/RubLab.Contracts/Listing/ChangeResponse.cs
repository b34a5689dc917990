namespace RubLab.Contracts.Listing;

/// <summary>One change to what a kitchen has stored. A deletion stays here as a tombstone.</summary>
/// <param name="Number">Rises by one with every change in the kitchen.</param>
/// <param name="Noun">What changed: formula.</param>
/// <param name="Id">Its id.</param>
/// <param name="Revision">Its revision after the change.</param>
/// <param name="Action">put or deleted.</param>
/// <param name="At">When.</param>
public sealed record ChangeResponse(long Number, string Noun, string Id, long Revision, string Action, string At);
