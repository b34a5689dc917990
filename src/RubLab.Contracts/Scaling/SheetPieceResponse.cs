using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Scaling;

/// <summary>What goes on one piece.</summary>
/// <param name="Number">Counted through the sheet, from 1.</param>
/// <param name="Line">Id of the pile line.</param>
/// <param name="Label">As sent.</param>
/// <param name="GreenWeight">What it weighs trimmed.</param>
/// <param name="Amount">What goes on it, in whole steps.</param>
/// <param name="TargetWeight">Of an injection: what the scale shows when all of it is in, before any drains; absent else.</param>
/// <param name="WeighedBack">As sent.</param>
public readonly record struct SheetPieceResponse(
    int Number, string Line, string? Label, Quantity GreenWeight, Quantity Amount, Quantity? TargetWeight = null, Quantity? WeighedBack = null);
