namespace RubLab.Contracts.Reference;

/// <summary>A source that stands beside numbers in answers.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Title">Its title.</param>
/// <param name="Publisher">Who published it; empty where nobody did.</param>
/// <param name="Edition">The edition the figures are from.</param>
/// <param name="Provenance">How the figures came here: read, computed, recollected and so on.</param>
/// <param name="Confidence">How far its figures can be trusted.</param>
/// <param name="Note">What else there is to know.</param>
public sealed record SourceResponse(
    string Id, string Title, string Publisher, string Edition, string Provenance, string Confidence, string Note);
