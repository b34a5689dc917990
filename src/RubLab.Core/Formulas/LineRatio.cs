using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;

namespace RubLab.Core.Formulas;

/// <summary>A formula line as a ratio.</summary>
/// <param name="Line">The line as authored.</param>
/// <param name="RatioGramsPerKilogram">Grams per kilogram of the base (per 100 cm2 for an area base); a band only where
/// volumes were turned into masses. What is weighed is the typical value.</param>
/// <param name="Share">Share of the whole formula, 0 to 1.</param>
/// <param name="Density">The density used for, or on offer to, this line; none where the form has none.</param>
public sealed record LineRatio(FormulaLine Line, Band RatioGramsPerKilogram, Band Share, BulkDensity? Density);
