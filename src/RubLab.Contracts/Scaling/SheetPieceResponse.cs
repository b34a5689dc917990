using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Scaling;

/// <summary>What goes on one piece.</summary>
public readonly record struct SheetPieceResponse(int Number, string Line, string? Label, Quantity GreenWeight, Quantity Amount);
