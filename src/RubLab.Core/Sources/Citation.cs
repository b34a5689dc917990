namespace RubLab.Core.Sources;

/// <summary>What stands beside a number taken from outside.</summary>
/// <param name="SourceId">Id of a <see cref="Source"/> in the catalogue.</param>
/// <param name="Locator">Where in the source: a table, an item number, a paragraph.</param>
/// <param name="Confidence">How far the figure can be trusted.</param>
public sealed record Citation(string SourceId, string Locator, Confidence Confidence);
