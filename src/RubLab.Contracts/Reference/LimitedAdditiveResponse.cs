namespace RubLab.Contracts.Reference;

/// <summary>An additive with a legal limit in an ingredient.</summary>
/// <param name="Additive">nitrite (as sodium nitrite), nitrate (as sodium nitrate), ascorbate, ascorbic-acid, phosphate or water.</param>
/// <param name="GramsPer100Grams">How much of it.</param>
public sealed record LimitedAdditiveResponse(string Additive, double GramsPer100Grams);
