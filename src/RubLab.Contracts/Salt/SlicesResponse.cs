namespace RubLab.Contracts.Salt;

/// <summary>Salt of a slice over the piece's mean, before any of it has travelled.</summary>
public sealed record SlicesResponse(double Centre, double End);
