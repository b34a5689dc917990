namespace RubLab.Storage.Changes;

/// <summary>One row of a kitchen's change feed.</summary>
/// <param name="Number">From 1 up in the order of commits, without gaps.</param>
/// <param name="Noun">What kind of item.</param>
/// <param name="ItemId">Which.</param>
/// <param name="Revision">The revision written; for a deletion the last there was.</param>
/// <param name="Action">What happened.</param>
/// <param name="At">When.</param>
public sealed record Change(long Number, string Noun, string ItemId, long Revision, ChangeAction Action, DateTimeOffset At);
