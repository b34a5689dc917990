namespace RubLab.Api.Callers;

/// <summary>Marks an endpoint for those who may pair devices and unpair them.</summary>
public sealed class PairsMetadata;
