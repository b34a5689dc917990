namespace RubLab.Core.Sources;

/// <summary>A publication, a definition, or the plain statement that none exists (common practice, recollection).</summary>
public sealed record Source(string Id, string Title, string Publisher, string Edition, string Provenance, Confidence Confidence, string Note);
