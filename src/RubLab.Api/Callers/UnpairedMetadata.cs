namespace RubLab.Api.Callers;

/// <summary>Marks the endpoint that a device asks before it is paired, so without a key.</summary>
public sealed class UnpairedMetadata;
