namespace RubLab.Contracts.Reference;

/// <summary>A cut in a list.</summary>
public sealed record CutSummary(string Id, string Name, string Species);
