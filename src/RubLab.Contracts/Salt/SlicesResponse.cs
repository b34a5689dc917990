namespace RubLab.Contracts.Salt;

/// <summary>Salt of a slice over the piece's mean, before any of it has travelled.</summary>
/// <param name="Centre">A centre slice.</param>
/// <param name="End">An end slice.</param>
public sealed record SlicesResponse(double Centre, double End);
