namespace RubLab.Contracts.Reference;

/// <summary>A source that stands beside numbers in answers.</summary>
public sealed record SourceResponse(
    string Id, string Title, string Publisher, string Edition, string Provenance, string Confidence, string Note);
