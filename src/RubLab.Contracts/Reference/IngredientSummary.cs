namespace RubLab.Contracts.Reference;

/// <summary>An ingredient in a list.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Group">The kind of ingredient.</param>
/// <param name="Forms">Ids of its forms.</param>
public sealed record IngredientSummary(string Id, string Name, string Group, IReadOnlyList<string> Forms);
