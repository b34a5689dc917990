namespace RubLab.Storage.Densities;

/// <summary>A kitchen's own density of one form, as one revision of it is.</summary>
/// <param name="IngredientId">Of the reference data; not checked here.</param>
/// <param name="FormId">A form of that ingredient.</param>
/// <param name="Revision">From 1 up, without gaps, through deletion and putting again too.</param>
/// <param name="Document">The weighings as JSON text, opaque here.</param>
/// <param name="UpdatedAt">When this revision was written.</param>
public sealed record StoredDensity(string IngredientId, string FormId, long Revision, string Document, DateTimeOffset UpdatedAt);
