namespace RubLab.Api.Callers;

/// <summary>Marks an endpoint that changes what is stored.</summary>
public sealed class WritesMetadata;
