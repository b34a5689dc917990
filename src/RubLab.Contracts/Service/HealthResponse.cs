namespace RubLab.Contracts.Service;

/// <summary>The server answers, and so does its store.</summary>
/// <param name="Status">Always ok; a server that is not answers with a problem.</param>
/// <param name="DataVersion">The edition of the reference data.</param>
public sealed record HealthResponse(string Status, string DataVersion);
