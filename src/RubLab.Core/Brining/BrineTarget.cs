namespace RubLab.Core.Brining;

/// <summary>What a line of a liquid is solved for.</summary>
/// <param name="Line">Index of the line that is free to meet it.</param>
/// <param name="Share">Share of the liquid's weight to reach, 0 to 1.</param>
/// <param name="IsSalt">Sodium chloride from all lines; otherwise the line's own ingredient, wherever it stands.</param>
public readonly record struct BrineTarget(int Line, double Share, bool IsSalt);
