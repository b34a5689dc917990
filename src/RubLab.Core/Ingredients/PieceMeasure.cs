using RubLab.Core.Sources;

namespace RubLab.Core.Ingredients;

/// <summary>A published weight of a piece, a pack or another measure that is no volume, as printed.</summary>
/// <param name="Sequence">Its number in the source's list for the ingredient.</param>
/// <param name="Amount">How many of it, above zero.</param>
/// <param name="Measure">What is counted, in the source's words: a clove, a stick.</param>
/// <param name="WeightGrams">The printed weight of the whole amount, above zero.</param>
/// <param name="Citation">Where it is printed.</param>
public sealed record PieceMeasure(int Sequence, double Amount, string Measure, double WeightGrams, Citation Citation);
