namespace RubLab.Storage.Densities;

/// <summary>The last density of a page: the next page starts after it, even if it has been deleted since.</summary>
public sealed record DensityPosition(string IngredientId, string FormId);
