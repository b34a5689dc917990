namespace RubLab.Storage.Kitchens;

/// <summary>One tenant.</summary>
/// <param name="Id">Chosen by the caller.</param>
/// <param name="Name">For people.</param>
/// <param name="DensityRevision">Goes up with every change of the kitchen's own densities; part of an entity tag.</param>
/// <param name="YieldRevision">Goes up with every change of the kitchen's own cooking yields.</param>
/// <param name="LastChange">The number of the newest row of its change feed; 0 before the first.</param>
/// <param name="ExamplesEdition">The edition of the example formulas it was given; null before that.</param>
/// <param name="CreatedAt">When it was first seen.</param>
public sealed record Kitchen(
    string Id, string Name, long DensityRevision, long YieldRevision, long LastChange, string? ExamplesEdition, DateTimeOffset CreatedAt);
