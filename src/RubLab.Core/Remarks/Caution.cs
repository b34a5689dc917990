namespace RubLab.Core.Remarks;

/// <summary>What must be said for safety, and whose word it defers to.</summary>
public sealed record Caution(string Id, string Text, string AppliesTo, string DefersTo, string SourceId);
